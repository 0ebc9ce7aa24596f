import {
  closedDamperLaw,
  damperLeakageClasses,
  gravityDamperLaws,
  motorizedDamperLaws,
  openDamperLaw,
  typicalDampers,
  type TypicalDamperKind,
} from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { DamperInFile } from '../file/damper-file.js';
import { leakLaw } from '../file/opening-law.js';
import type { MeasuredLeak } from '../file/schema/measured-leak.js';
import type { PathPart, TestPreparation } from '../house.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { damperExponent } from './read-off-law.js';
import { damperExponentSource, ourChoice, sourceOf } from './sources.js';

/** Kinds of damper in a house file. */
export type DamperKind = 'gravity' | 'barometric' | 'motorized' | 'none';

/** A damper as it stands in the file. */
export interface TypedDamper {
  readonly inFile: DamperInFile;
  /** Where the item stands. */
  readonly path: IssuePath;
  /** Area of the duct that it sits in, where there is one [m2]. */
  readonly ductAreaM2: number | undefined;
  /** Leakage of the item's closed damper, where that is given. */
  readonly closedLeakage: MeasuredLeak | undefined;
  readonly duringTest: TestPreparation;
  /** Whether it stands in an opening of its own that is always there, and not in one that its item opens. */
  readonly alwaysThere?: boolean;
}

/** The laws of a damper, as in a part of a path; none where there is no damper. */
export type DamperLaws = Pick<PathPart, 'law' | 'closed'> | 'none';

const typicalOf: Readonly<Record<Exclude<DamperKind, 'none'>, TypicalDamperKind>> = {
  gravity: 'backdraft damper',
  barometric: 'barometric inlet',
  motorized: 'motorized damper',
};

/**
 * What a damper is when nothing but its kind is given, and its kind.
 *
 * @param inFile - what the file says
 * @returns its keys
 */
export function damperKeys(inFile: DamperInFile): Exclude<DamperInFile, string> {
  return typeof inFile === 'string' ? { kind: inFile } : inFile;
}

/**
 * The laws of a damper: open, or opened by the air, and closed.
 *
 * Where nothing is said of its leakage, that stays inside the tested leakage.
 *
 * @param reading - where issues and assumptions are collected
 * @param damper - what the file says
 * @returns its laws; `undefined` where something is wrong, which is then reported
 */
export function readDamper(reading: Reading, damper: TypedDamper): DamperLaws | undefined {
  const keys = damperKeys(damper.inFile);
  const { kind, diameter, stuck } = keys;
  if (kind === 'none') return 'none';
  const path = [...damper.path, 'damper'];
  const origin = originOf(path);
  const areaM2 = diameter === undefined ? damper.ductAreaM2 : (Math.PI / 4) * diameter ** 2;
  if (areaM2 === undefined) {
    report(reading, path, { code: 'damper.size-missing', parameters: {} });
    return undefined;
  }
  const typical = typicalDampers[typicalOf[kind]];
  const source = sourceOf(typical);
  const openLossCoefficient = givenOr(reading, keys.loss, {
    origin,
    what: 'loss of its open damper',
    value: { si: typical.openLossCoefficient, dimension: 'ratio' },
    source,
  });
  const coefficient = readLeakage(reading, damper, areaM2);
  if (stuck === 'open') return { law: openDamperLaw({ areaM2, openLossCoefficient }) };
  if (stuck === 'shut' && coefficient === undefined) {
    report(reading, [...path, 'stuck'], { code: 'damper.leakage-missing', parameters: {} });
    return undefined;
  }
  // Leakage by area at 1 Pa, of exponent 0.5.
  const leakage =
    coefficient === undefined
      ? { leakageM3PerSM2: typical.leakageM3PerSM2, pressurePa: typical.leakagePressurePa }
      : { leakageM3PerSM2: coefficient / areaM2, pressurePa: 1 };
  const size = { areaM2, openLossCoefficient, leakage };
  if (stuck === 'shut') return { law: closedDamperLaw(size) };
  const inside = 'inside the tested leakage';
  if (kind === 'motorized') {
    for (const key of ['opensAt', 'fullyOpenAt'] as const) {
      if (keys[key] === undefined) continue;
      const parameters = { key, way: 'kind: motorized' };
      report(reading, [...path, key], { code: 'key.without-effect', parameters });
    }
    const { open, closed } = motorizedDamperLaws(size);
    return { law: open, closed: coefficient === undefined ? inside : closed };
  }
  const pressures = readPressures(reading, damper, kind);
  if (pressures === undefined) return undefined;
  const law = gravityDamperLaws({ ...size, ...pressures }).working;
  if (coefficient !== undefined) return { law };
  // What it leaks while its item rests is in the tested leakage, and so is what it leaks while that runs.
  const { closedLeakage: _, ...tight } = law;
  return { law: tight, closed: inside };
}

/** Flow coefficient of the closed damper [m3/(s Pa^0.5)], where its leakage or class is given. */
function readLeakage(reading: Reading, damper: TypedDamper, areaM2: number): number | undefined {
  const { inFile, path, closedLeakage, duringTest } = damper;
  const { leakageClass } = damperKeys(inFile);
  const origin = originOf(path);
  if (closedLeakage !== undefined) {
    if (leakageClass !== undefined) {
      const parameters = { key: 'leakageClass', way: 'closedLeakage' };
      report(reading, [...path, 'damper', 'leakageClass'], {
        code: 'key.without-effect',
        parameters,
      });
    }
    reading.assumptions.push({
      origin,
      what: 'flow exponent of its closed damper',
      value: { si: damperExponent, dimension: 'ratio' },
      source: damperExponentSource,
    });
    const law = leakLaw(closedLeakage, damperExponent);
    return law.kind === 'powerLaw' ? law.coefficientM3PerSPaN : undefined;
  }
  if (leakageClass === undefined && damper.alwaysThere === true) {
    const { leakageM3PerSM2, leakagePressurePa, ...provenance } =
      typicalDampers[typicalOf[damperKeys(inFile).kind === 'gravity' ? 'gravity' : 'barometric']];
    reading.assumptions.push({
      origin,
      what: `leakage of its closed damper at ${leakagePressurePa} Pa`,
      value: { si: areaM2 * leakageM3PerSM2, dimension: 'volumeFlow' },
      source: sourceOf(provenance),
    });
    return (areaM2 * leakageM3PerSM2) / Math.sqrt(leakagePressurePa);
  }
  if (leakageClass === undefined) {
    reading.assumptions.push({
      origin,
      what: 'leakage of its closed damper',
      value:
        duringTest === 'sealed'
          ? 'none: it was sealed during the test'
          : 'inside the tested leakage',
      source: ourChoice('no leakage of the closed damper is given'),
    });
    return undefined;
  }
  const { leakageM3PerSM2, pressurePa, ...provenance } = damperLeakageClasses[leakageClass];
  reading.assumptions.push({
    origin,
    what: `leakage of its closed damper at ${Math.round(pressurePa)} Pa, the most that its class allows`,
    value: { si: areaM2 * leakageM3PerSM2, dimension: 'volumeFlow' },
    source: sourceOf(provenance),
  });
  return (areaM2 * leakageM3PerSM2) / Math.sqrt(pressurePa);
}

function readPressures(
  reading: Reading,
  { inFile, path: itemPath }: TypedDamper,
  kind: 'gravity' | 'barometric',
): { readonly crackingPressurePa: number; readonly fullyOpenPressurePa: number } | undefined {
  const { opensAt, fullyOpenAt } = damperKeys(inFile);
  const path = [...itemPath, 'damper'];
  const origin = originOf(path);
  const typical = typicalDampers[typicalOf[kind]];
  const { crackingPressurePa: cracks = 0, fullyOpenPressurePa: opens = 0 } = typical;
  if (opensAt !== undefined && fullyOpenAt !== undefined && fullyOpenAt <= opensAt) {
    const parameters = { opensAtPa: opensAt, fullyOpenAtPa: fullyOpenAt };
    report(reading, [...path, 'fullyOpenAt'], { code: 'damper.open-before-it-opens', parameters });
    return undefined;
  }
  const low = fullyOpenAt !== undefined && fullyOpenAt <= cracks;
  const crackingPressurePa = givenOr(reading, opensAt, {
    origin,
    what: 'pressure at which its damper starts to open',
    value: { si: low ? fullyOpenAt / 2 : cracks, dimension: 'pressure' },
    source: low ? ourChoice('half of the given pressure of full opening') : sourceOf(typical),
  });
  const high = opensAt !== undefined && opensAt !== cracks;
  const fullyOpenPressurePa = givenOr(reading, fullyOpenAt, {
    origin,
    what: 'pressure from which its damper is fully open',
    value: { si: high ? opensAt + opens - cracks : opens, dimension: 'pressure' },
    source: high
      ? ourChoice('as far above the given opening pressure as with a typical damper')
      : sourceOf(typical),
  });
  return { crackingPressurePa, fullyOpenPressurePa };
}
