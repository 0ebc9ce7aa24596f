import { coefficientFromFlow, typicalFanCurve, type FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { DevicePathInFile } from '../file/device-path-file.js';
import type { MeasuredLeak } from '../file/schema/measured-leak.js';
import type { DevicePath, Interlock, PathPart, TestPreparation } from '../house.js';
import type { HouseNames } from './house-names.js';
import { damperKeys, readDamper } from './read-damper.js';
import { readDuct, type ReadDuct } from './read-duct.js';
import { fanAtAltitude } from './fan-at-altitude.js';
import { readBoosterPressures } from './read-fan-pressures.js';
import { readInterlock } from './read-interlock.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { withReverseFlow } from './reverse-flow.js';
import { commonPractice, ourChoice } from './sources.js';

/** A device as far as its path depends on it. */
export interface TypedPath {
  readonly inFile: DevicePathInFile & { readonly closedLeakage?: MeasuredLeak | undefined };
  readonly name: string;
  readonly path: IssuePath;
  readonly direction: 'exhaust' | 'supply';
  /** Flow of its fastest speed [m3/s]. */
  readonly topFlowM3PerS: number;
  readonly duringTest: TestPreparation;
  readonly names: HouseNames;
  /** Altitude of the house [m]. */
  readonly altitudeM: number;
}

/** The path of a device, with what opens its damper where that is something else. */
export interface ReadPath {
  readonly path: DevicePath;
  readonly damperOpensWith?: Interlock;
}

/** Pressure that a stopped fan takes at its greatest rated flow where none is given [Pa]. */
const assumedStoppedLossPa = 60;

/** What a device is described by: installed, or fan and duct apart. */
export function hasPath(inFile: DevicePathInFile): boolean {
  const { duct, inletDuct, damper } = inFile;
  return duct !== undefined || inletDuct !== undefined || (damper ?? 'gravity') !== 'gravity';
}

/** Whether the fan's curve is that of the bare fan. */
export function hasDuct(inFile: DevicePathInFile): boolean {
  return inFile.duct !== undefined || inFile.inletDuct !== undefined;
}

/**
 * Ducts and damper of a device, in the order in which air passes them, and its stopped fan.
 *
 * @param reading - where issues and assumptions are collected
 * @param typed - what the file says
 * @returns the path; `undefined` where something is wrong, which is then reported
 */
export function readDevicePath(reading: Reading, typed: TypedPath): ReadPath | undefined {
  const { inFile, path, direction, topFlowM3PerS, name } = typed;
  if (!checkKeys(reading, typed)) return undefined;
  const blower = readBlower(reading, typed);
  const far = direction === 'exhaust' ? 'end' : 'beginning';
  // The one duct of a fan in its unit lies between it and outdoors, of a remote one between it and the room.
  const ductComesFirst =
    blower === 'remote' ? direction === 'exhaust' : blower === 'in unit' && direction === 'supply';
  const duct = (key: 'duct' | 'inletDuct', first: boolean): ReadDuct | undefined =>
    inFile[key] === undefined
      ? undefined
      : readDuct(reading, {
          inFile: inFile[key],
          path: [...path, key],
          name: key === 'duct' ? 'duct' : 'inlet duct',
          begins: first,
          ends: !first,
          outside: far,
        });
  const inlet = duct('inletDuct', true);
  const main = duct('duct', ductComesFirst);
  if ((inFile.duct && !main) || (inFile.inletDuct && !inlet)) return undefined;
  const before = [inlet?.part, ductComesFirst ? main?.part : undefined].filter(isPart);
  const after = [ductComesFirst ? undefined : main?.part].filter(isPart);

  const typedDamper = inFile.damper ?? assumedDamper(reading, path);
  const damper = readDamper(reading, {
    inFile: typedDamper,
    path,
    ductAreaM2: main?.areaM2 ?? inlet?.areaM2,
    closedLeakage: inFile.closedLeakage,
    duringTest: typed.duringTest,
  });
  const keys = damperKeys(typedDamper);
  const damperOpensWith = readInterlock(reading, typed.names, {
    inFile: keys.opensWith,
    path: [...path, 'damper', 'opensWith'],
    name,
  });
  const booster = inFile.boosterFan === undefined ? [] : [readBooster(reading, typed)];
  if (damper === undefined || !booster.every(isPart)) return undefined;
  const lint =
    inFile.lintScreen === undefined ? [] : [lintScreen(inFile.lintScreen, topFlowM3PerS)];
  const stoppedLossPa = givenOr(reading, inFile.stoppedLoss, {
    origin: originOf(path),
    what: 'pressure that its stopped fan takes at its greatest rated flow',
    value: { si: assumedStoppedLossPa, dimension: 'pressure' },
    source: ourChoice('about the rating pressure of such fans; no measured value is known'),
  });
  const damperPart: readonly PathPart[] =
    damper === 'none' ? [] : [{ name: 'damper', riseM: 0, ...damper }];
  return {
    path: {
      before: [...before, ...lint],
      after: [...damperPart, ...after, ...booster],
      stoppedLaw: rootLaw(stoppedLossPa, topFlowM3PerS),
    },
    ...(damperOpensWith === undefined ? {} : { damperOpensWith }),
  };
}

function isPart(part: PathPart | undefined): part is PathPart {
  return part !== undefined;
}

/** Keys that need others, or that others take the meaning from. */
function checkKeys(reading: Reading, { inFile, path }: TypedPath): boolean {
  const before = reading.issues.length;
  const { blower, inletDuct, duct, damper } = inFile;
  if (blower === 'inline' && (inletDuct === undefined || duct === undefined)) {
    report(reading, [...path, 'blower'], { code: 'duct.inline-needs-both', parameters: {} });
  }
  if (blower !== 'inline' && inletDuct !== undefined) {
    const parameters = { key: 'inletDuct', way: `blower: ${blower ?? 'in unit'}` };
    report(reading, [...path, 'inletDuct'], { code: 'key.without-effect', parameters });
  }
  const keys = damper === undefined ? undefined : damperKeys(damper);
  if (keys?.kind === 'barometric') {
    const allowed = ['gravity', 'motorized', 'none'];
    const parameters = { kind: keys.kind, allowed, where: String(path[0]) };
    report(reading, [...path, 'damper'], { code: 'damper.kind-not-here', parameters });
  }
  if (keys?.opensWith !== undefined && (keys.kind !== 'motorized' || inFile.boosterFan)) {
    const way = keys.kind === 'motorized' ? 'boosterFan' : `kind: ${keys.kind}`;
    const parameters = { key: 'opensWith', way };
    report(reading, [...path, 'damper', 'opensWith'], { code: 'key.without-effect', parameters });
  }
  return reading.issues.length === before;
}

/**
 * Reports keys of a path that mean nothing for a device whose flow is that of the device as installed.
 *
 * @param reading - where issues are collected
 * @param inFile - what the file says
 * @param path - where the device stands
 */
export function reportKeysWithoutDuct(
  reading: Reading,
  inFile: DevicePathInFile,
  path: IssuePath,
): void {
  if (hasDuct(inFile)) return;
  for (const key of ['blower', 'lintScreen', 'boosterFan'] as const) {
    if (inFile[key] === undefined) continue;
    report(reading, [...path, key], { code: 'duct.needed', parameters: { key } });
  }
  if (!hasPath(inFile) && inFile.stoppedLoss !== undefined) {
    report(reading, [...path, 'stoppedLoss'], {
      code: 'duct.needed',
      parameters: { key: 'stoppedLoss' },
    });
  }
}

function readBlower(
  reading: Reading,
  { inFile, path }: TypedPath,
): 'in unit' | 'inline' | 'remote' {
  if (inFile.blower !== undefined) return inFile.blower;
  if (!hasDuct(inFile)) return 'in unit';
  reading.assumptions.push({
    origin: originOf(path),
    what: 'place of its fan',
    value: 'in the unit',
    source: commonPractice('most devices carry their fan in themselves'),
  });
  return 'in unit';
}

function assumedDamper(reading: Reading, path: IssuePath): 'gravity' {
  reading.assumptions.push({
    origin: originOf(path),
    what: 'damper',
    value: 'a backdraft damper that the air opens',
    source: commonPractice('such devices have a backdraft damper'),
  });
  return 'gravity';
}

function readBooster(
  reading: Reading,
  { inFile, path, altitudeM }: TypedPath,
): PathPart | undefined {
  const typed = inFile.boosterFan;
  if (typed === undefined) return undefined;
  const keys = typeof typed === 'number' ? { flow: typed } : typed;
  const pressures = readBoosterPressures(reading, keys, [...path, 'boosterFan']);
  if (pressures === undefined) return undefined;
  const points = typicalFanCurve({ ratedFlowM3PerS: keys.flow, ...pressures, ductPressurePa: 0 });
  return {
    name: 'booster fan',
    riseM: 0,
    law: fanAtAltitude(
      withReverseFlow({ kind: 'fanCurve', points, beyondShutOff: 'blocked' }),
      altitudeM,
    ),
    closed: rootLaw(assumedStoppedLossPa, keys.flow),
  };
}

function lintScreen(lossPa: number, flowM3PerS: number): PathPart {
  return { name: 'lint screen', riseM: 0, law: rootLaw(lossPa, flowM3PerS) };
}

/** What takes a pressure that grows with the square of the flow. */
function rootLaw(pressurePa: number, volumeFlowM3PerS: number): FlowLawDescription {
  const exponent = 0.5;
  const coefficientM3PerSPaN = coefficientFromFlow({ volumeFlowM3PerS, pressurePa, exponent });
  return { kind: 'powerLaw', coefficientM3PerSPaN, exponent };
}
