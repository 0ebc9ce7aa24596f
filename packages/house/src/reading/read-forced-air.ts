import { coefficientFromFlow, flowAtPressure, type FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import { forcedAirFile, type ForcedAirInFile } from '../file/forced-air-file.js';
import type { DuctLeak, ForcedAirSystem, Register } from '../forced-air.js';
import type { TestPreparation } from '../house.js';
import { findOutlet, findZone } from './house-names.js';
import { readAirHandlerLaw } from './read-air-handler-law.js';
import { checkLaw } from './read-law.js';
import type { HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { readStand } from './read-stand.js';
import { givenOr, originOf, readValue, report, type Reading } from './reading.js';
import { commonPractice, ourChoice } from './sources.js';

/** Exponent of registers and of the air handler's own resistance: turbulent [-]. */
const turbulentExponent = 0.5;
/** Exponent of duct leakage where none is given [-]. */
const assumedLeakExponent = 0.6;
/** Pressure in supply and return ducts where none is given [Pa]. */
const assumedDuctPressurePa = 25;
/** What filter, coil and cabinet take at the fan's flow where nothing is given [Pa]. */
const assumedStandingLossPa = 75;
/** Shares whose sum lies this close to one are taken as whole [-]. */
const sumTolerance = 0.005;

/**
 * Reads the forced-air systems.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `forcedAir`
 * @param house - zones, names, and the preparation of the test
 * @returns systems in the order of the file; wrong ones are left out
 */
export function readForcedAir(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar & {
    readonly preparation: ReadonlyMap<string, TestPreparation>;
    /** Altitude of the house [m]. */
    readonly altitudeM: number;
  },
): readonly ForcedAirSystem[] {
  return items.flatMap(({ name, path, raw }) => {
    const inFile = readValue(reading, forcedAirFile, { path, raw: raw ?? {} });
    if (inFile === undefined) return [];
    const system = { inFile, path, origin: originOf(path) };
    const supply = readSide(reading, house, { ...system, side: 'supply' });
    const back = readSide(reading, house, { ...system, side: 'return' });
    const standingLossPa = givenOr(reading, inFile.standingLoss, {
      origin: system.origin,
      what: 'loss of its standing air handler at its flow',
      value: { si: assumedStandingLossPa, dimension: 'pressure' },
      source: ourChoice('filter, coil and cabinet of a usual air handler'),
    });
    const standingLaw = checkLaw(
      reading,
      path,
      turbulent({ flowM3PerS: inFile.flow, pressurePa: standingLossPa }),
    );
    const risePa =
      supply === undefined || back === undefined ? undefined : supply.pressurePa + back.pressurePa;
    const { altitudeM } = house;
    const typedLaw =
      risePa === undefined
        ? undefined
        : readAirHandlerLaw(reading, { inFile, path, risePa, altitudeM });
    const runningLaw = typedLaw && checkLaw(reading, path, typedLaw);
    const duringTest = readStand(reading, house.preparation, {
      name,
      path,
      given: inFile.duringTest,
      assumed: 'open',
      matters: supply !== undefined && back !== undefined,
    });
    if (supply === undefined || back === undefined) return [];
    if (runningLaw === undefined || standingLaw === undefined) return [];
    return [
      {
        id: name,
        origin: system.origin,
        runningLaw,
        standingLaw,
        supplies: supply.registers,
        returns: back.registers,
        leaks: [...supply.leaks, ...back.leaks],
        duringTest,
        continuous: inFile.continuous ?? false,
      },
    ];
  });
}

interface Side {
  readonly inFile: ForcedAirInFile;
  readonly path: IssuePath;
  readonly origin: string;
  readonly side: 'supply' | 'return';
}

function readSide(
  reading: Reading,
  house: HouseSoFar,
  of: Side,
):
  | {
      readonly pressurePa: number;
      readonly registers: readonly Register[];
      readonly leaks: readonly DuctLeak[];
    }
  | undefined {
  const { inFile, path, origin, side } = of;
  const key = side === 'supply' ? 'supplies' : 'returns';
  const pressurePa = givenOr(reading, inFile[`${side}Pressure`], {
    origin,
    what: `pressure in its ${side} ducts`,
    value: { si: assumedDuctPressurePa, dimension: 'pressure' },
    source: commonPractice('ducts are tested at 25 Pa as a mean of what they see'),
  });
  const leaks = readLeaks(reading, house, { ...of, pressurePa });
  const leakedM3PerS = leaks?.reduce((sum, { atPressureM3PerS }) => sum + atPressureM3PerS, 0);
  const shares = readShares(reading, house, { inFile: inFile[key], path: [...path, key] });
  if (leaks === undefined || leakedM3PerS === undefined || shares === undefined) return undefined;
  const restM3PerS = inFile.flow - leakedM3PerS;
  if (restM3PerS <= 0) {
    const parameters = { side };
    report(reading, [...path, `${side}Leakage`], {
      code: 'forced-air.leaks-everything',
      parameters,
    });
    return undefined;
  }
  const registers = shares.flatMap(({ zone, share }): readonly Register[] => {
    const law = checkLaw(
      reading,
      [...path, key],
      turbulent({ flowM3PerS: share * restM3PerS, pressurePa }),
    );
    return law === undefined ? [] : [{ zone, share, law }];
  });
  return { pressurePa, registers, leaks: leaks.map(({ leak }) => leak) };
}

function readShares(
  reading: Reading,
  house: HouseSoFar,
  of: { readonly inFile: ForcedAirInFile['supplies']; readonly path: IssuePath },
): readonly { readonly zone: string; readonly share: number }[] | undefined {
  const { inFile, path } = of;
  if (typeof inFile === 'string') {
    const zone = findZone(reading, house.names, { name: inFile, path });
    return zone === undefined ? undefined : [{ zone, share: 1 }];
  }
  const read = Object.entries(inFile).map(([name, share]) => ({
    zone: findZone(reading, house.names, { name: name.trim(), path: [...path, name] }),
    share,
  }));
  const sum = read.reduce((total, { share }) => total + share, 0);
  if (Math.abs(sum - 1) > sumTolerance) {
    const parameters = { sumPercent: Number((100 * sum).toFixed(2)) };
    report(reading, path, { code: 'forced-air.shares-sum', parameters });
    return undefined;
  }
  const known = read.flatMap(({ zone, share }) =>
    zone === undefined ? [] : [{ zone, share: share / sum }],
  );
  return known.length === read.length ? known : undefined;
}

interface ReadLeak {
  readonly leak: DuctLeak;
  /** What it passes at the pressure in its ducts, for the sizes of the registers [m3/s]. */
  readonly atPressureM3PerS: number;
}

function readLeaks(
  reading: Reading,
  house: HouseSoFar,
  of: Side & { readonly pressurePa: number },
): readonly ReadLeak[] | undefined {
  const { inFile, path, origin, side } = of;
  const key = `${side}Leakage` as const;
  const typed = inFile[key];
  if (typed === undefined) {
    reading.assumptions.push({
      origin,
      what: `leakage of its ${side} ducts`,
      value: 'none',
      source: ourChoice('none is given'),
    });
    return [];
  }
  const list = [typed].flat();
  const read = list.map((leak, index) => {
    const at = Array.isArray(typed) ? [...path, key, index] : [...path, key];
    return readLeak(reading, house, { ...of, leak, at });
  });
  const known = read.flatMap((leak) => (leak === undefined ? [] : [leak]));
  return known.length === list.length ? known : undefined;
}

type LeakInFile = Extract<NonNullable<ForcedAirInFile['supplyLeakage']>, { to: string }>;

function readLeak(
  reading: Reading,
  house: HouseSoFar,
  of: Side & { readonly pressurePa: number; readonly leak: LeakInFile; readonly at: IssuePath },
): ReadLeak | undefined {
  const { leak, at, inFile, pressurePa, side } = of;
  const to = findOutlet(reading, house.names, { name: leak.to, path: [...at, 'to'] });
  const exponent = givenOr(reading, leak.exponent, {
    origin: originOf(at),
    what: 'flow exponent of duct leakage',
    value: { si: assumedLeakExponent, dimension: 'ratio' },
    source: commonPractice('0.6 for leaks of ducts'),
  });
  const measured = leak.flow?.kind === 'flow' ? leak.flow : undefined;
  if ((leak.share === undefined) === (measured === undefined)) {
    const both = leak.share !== undefined;
    report(
      reading,
      both ? [...at, 'flow'] : at,
      both
        ? { code: 'opening.several-laws', parameters: { keys: ['share', 'flow'] } }
        : {
            code: 'opening.law-missing',
            parameters: { accepted: ['share: 8 %', 'flow: 60 cfm at 25 Pa'] },
          },
    );
    return undefined;
  }
  const known = measured ?? {
    volumeFlowM3PerS: (leak.share ?? 0) * inFile.flow,
    pressurePa,
  };
  const coefficientM3PerSPaN = coefficientFromFlow({ ...known, exponent });
  const law = checkLaw(reading, at, { kind: 'powerLaw', coefficientM3PerSPaN, exponent });
  if (to === undefined || law === undefined) return undefined;
  return {
    leak: { side, to, law },
    atPressureM3PerS: flowAtPressure({ coefficientM3PerSPaN, exponent, pressurePa }),
  };
}

function turbulent(at: {
  readonly flowM3PerS: number;
  readonly pressurePa: number;
}): FlowLawDescription {
  const exponent = turbulentExponent;
  const { flowM3PerS: volumeFlowM3PerS, pressurePa } = at;
  const coefficientM3PerSPaN = coefficientFromFlow({ volumeFlowM3PerS, pressurePa, exponent });
  return { kind: 'powerLaw', coefficientM3PerSPaN, exponent };
}
