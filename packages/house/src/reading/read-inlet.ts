import type { FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { DamperInFile } from '../file/damper-file.js';
import type { DuctInFile } from '../file/duct-file.js';
import { openingLaws, type OpeningLawInFile } from '../file/opening-law.js';
import type { MeasuredLeak } from '../file/schema/measured-leak.js';
import type { PathPart, TestPreparation } from '../house.js';
import { damperKeys, readDamper, type DamperLaws } from './read-damper.js';
import { readDuct, type ReadDuct } from './read-duct.js';
import { readOpeningLaw } from './read-law.js';
import { readOffLaw } from './read-off-law.js';
import { report, type Reading } from './reading.js';

/** An opening as it stands in the file: a hole, a duct, a damper, or several of them in series. */
export interface TypedInlet {
  readonly inFile: OpeningLawInFile & {
    readonly duct?: DuctInFile | undefined;
    readonly damper?: DamperInFile | undefined;
    readonly closedLeakage?: MeasuredLeak | undefined;
  };
  readonly path: IssuePath;
  readonly duringTest: TestPreparation;
  /** Whether a motor opens it with its driver, so that it has a law when closed. */
  readonly motorized: boolean;
}

/** What an opening lets through, and what stands in series with it. */
export interface ReadInlet {
  readonly law: FlowLawDescription;
  readonly closedLaw?: FlowLawDescription;
  /** Height that air gains on the way in through `law` [m]. */
  readonly riseM?: number;
  readonly parts?: readonly PathPart[];
}

/**
 * The laws of an opening with its duct and damper.
 *
 * @param reading - where issues and assumptions are collected
 * @param typed - what the file says
 * @returns its laws; `undefined` where something is wrong, which is then reported
 */
export function readInlet(reading: Reading, typed: TypedInlet): ReadInlet | undefined {
  const { inFile, path, motorized } = typed;
  const way = openingLaws.find(({ key }) => inFile[key] !== undefined);
  if (!checkKeys(reading, typed, way?.key)) return undefined;
  const duct =
    inFile.duct === undefined
      ? undefined
      : readDuct(reading, {
          inFile: inFile.duct,
          path: [...path, 'duct'],
          name: 'duct',
          begins: true,
          ends: true,
          outside: 'beginning',
        });
  if (inFile.duct !== undefined && duct === undefined) return undefined;
  const hasDamper = inFile.damper !== undefined && damperKeys(inFile.damper).kind !== 'none';
  if (way === undefined && (hasDamper || (motorized && duct !== undefined))) {
    return damperInlet(reading, typed, duct);
  }
  if (way === undefined && duct !== undefined) {
    const { law, riseM } = duct.part;
    return { law, ...(riseM === 0 ? {} : { riseM }) };
  }
  const law = readOpeningLaw(reading, typed);
  const closedLaw = motorized ? readClosed(reading, typed, law) : undefined;
  if (law === undefined) return undefined;
  return stuck(typed, {
    law,
    ...(closedLaw === undefined ? {} : { closedLaw }),
    ...(duct === undefined ? {} : { parts: [duct.part] }),
  });
}

/** An opening whose damper is all that it has besides its duct. */
function damperInlet(
  reading: Reading,
  typed: TypedInlet,
  duct: ReadDuct | undefined,
): ReadInlet | undefined {
  const laws = damperLaws(reading, typed, duct?.areaM2);
  if (laws === undefined || laws === 'none') return undefined;
  const { law, closed } = laws;
  const parts = duct === undefined ? {} : { parts: [duct.part] };
  if (!typed.motorized) return { law, ...parts };
  // A stuck damper has one law in both positions.
  const closedLaw = closed === undefined ? law : closed;
  return { law, ...(typeof closedLaw === 'string' ? {} : { closedLaw }), ...parts };
}

function damperLaws(
  reading: Reading,
  { inFile, path, duringTest, motorized }: TypedInlet,
  ductAreaM2: number | undefined,
): DamperLaws | undefined {
  return readDamper(reading, {
    inFile: inFile.damper ?? 'motorized',
    path,
    ductAreaM2,
    closedLeakage: inFile.closedLeakage,
    duringTest,
    alwaysThere: !motorized,
  });
}

/** The law of a closed damper whose open law is that of its opening. */
function readClosed(
  reading: Reading,
  typed: TypedInlet,
  open: FlowLawDescription | undefined,
): FlowLawDescription | undefined {
  const { inFile, path, duringTest } = typed;
  const keys = inFile.damper === undefined ? undefined : damperKeys(inFile.damper);
  if (keys?.leakageClass === undefined) {
    return readOffLaw(reading, { inFile, path, duringTest, hasFlow: true });
  }
  const laws = damperLaws(
    reading,
    // What the damper loses when open is in the law of its opening.
    { ...typed, inFile: { ...inFile, damper: { ...keys, loss: 1, stuck: undefined } } },
    open?.kind === 'orifice' ? open.areaM2 : undefined,
  );
  const closed = laws === undefined || laws === 'none' ? undefined : laws.closed;
  return typeof closed === 'string' ? undefined : closed;
}

function stuck({ inFile }: TypedInlet, inlet: ReadInlet): ReadInlet {
  const how = inFile.damper === undefined ? undefined : damperKeys(inFile.damper).stuck;
  if (how === 'open') return { ...inlet, closedLaw: inlet.law };
  if (how === 'shut' && inlet.closedLaw !== undefined) return { ...inlet, law: inlet.closedLaw };
  return inlet;
}

function checkKeys(
  reading: Reading,
  { inFile, path, motorized }: TypedInlet,
  way: string | undefined,
): boolean {
  const before = reading.issues.length;
  const { damper } = inFile;
  if (damper === undefined) return true;
  const keys = damperKeys(damper);
  const allowed = motorized ? ['motorized'] : ['gravity', 'barometric', 'none'];
  if (!allowed.includes(keys.kind)) {
    const parameters = { kind: keys.kind, allowed, where: String(path[0]) };
    report(reading, [...path, 'damper'], { code: 'damper.kind-not-here', parameters });
  } else if (way !== undefined && !motorized && keys.kind !== 'none') {
    const parameters = { keys: ['damper', way] };
    report(reading, [...path, way], { code: 'opening.several-laws', parameters });
  }
  const without = [
    ...(keys.opensWith === undefined ? [] : (['opensWith'] as const)),
    ...(way !== undefined && keys.loss !== undefined ? (['loss'] as const) : []),
  ];
  for (const key of without) {
    const parameters = { key, way: key === 'loss' ? String(way) : 'opensWith of the opening' };
    report(reading, [...path, 'damper', key], { code: 'key.without-effect', parameters });
  }
  if (motorized && way !== undefined && keys.stuck === 'shut') {
    if (inFile.closedLeakage === undefined && keys.leakageClass === undefined) {
      report(reading, [...path, 'damper', 'stuck'], {
        code: 'damper.leakage-missing',
        parameters: {},
      });
    }
  }
  return reading.issues.length === before;
}
