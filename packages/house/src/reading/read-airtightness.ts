import {
  coefficientFromLeakageArea,
  flowAtPressure,
  type LeakageAreaBasis,
} from '@evendraft/airflow';
import {
  airtightnessFile,
  type ResultInFile,
  type TightnessInFile,
} from '../file/airtightness-file.js';
import { assumedExponent } from '../file/opening-law.js';
import {
  insideZoneKinds,
  type Airtightness,
  type AirtightnessCase,
  type TestPreparation,
} from '../house.js';
import { reportUnknown, type HouseNames } from './house-names.js';
import type { HouseSoFar } from './read-place.js';
import { givenOr, readValue, report, warn, type Reading } from './reading.js';
import { commonPractice, exponentSource, ourChoice } from './sources.js';

/** The airtightness, and how each named thing stood during the test. */
export interface AirtightnessRead {
  readonly airtightness: Airtightness;
  readonly preparation: ReadonlyMap<string, TestPreparation>;
}

/**
 * Reads the airtightness of the house.
 *
 * @param reading - where issues and assumptions are collected
 * @param root - the whole file
 * @param house - zones, names of everything, and the volume where the user's numbers give one [m3]
 * @returns the airtightness; `undefined` where it is missing or wrong, which is then reported
 */
export function readAirtightness(
  reading: Reading,
  root: Readonly<Record<string, unknown>>,
  house: Pick<HouseSoFar, 'names' | 'zones'> & { readonly knownVolumeM3: number | undefined },
): AirtightnessRead | undefined {
  const origin = 'airtightness';
  const inFile = readValue(reading, airtightnessFile, { path: [origin], raw: root[origin] });
  if (inFile === undefined) return undefined;
  const full = 'result' in inFile ? inFile : { result: inFile };
  const resultPath = 'result' in inFile ? [origin, 'result'] : [origin];

  const ends = [full.result.from, ...(full.result.upTo === undefined ? [] : [full.result.upTo])];
  if (ends.some((end) => end.kind === 'airChanges') && house.knownVolumeM3 === undefined) {
    report(reading, resultPath, { code: 'airtightness.volume-needed', parameters: {} });
    return undefined;
  }
  const exponent = givenOr(reading, full.exponent, {
    origin,
    what: 'flow exponent of the envelope',
    value: { si: assumedExponent, dimension: 'ratio' },
    source: exponentSource,
  });
  const cases = readCases(full.result, { exponent, volumeM3: house.knownVolumeM3 ?? 0 });
  const [tight, loose] = cases;
  if (tight !== undefined && loose !== undefined) {
    const atTight = tight.volumeFlowM3PerS / tight.pressurePa ** exponent;
    const atLoose = loose.volumeFlowM3PerS / loose.pressurePa ** exponent;
    if (atTight >= atLoose) {
      report(reading, resultPath, { code: 'airtightness.range-upside-down', parameters: {} });
    }
  }
  const planned = full.result.planned;
  if (!planned) assumeTest(reading, full);
  if (house.zones.some(({ zone }) => !insideZoneKinds.includes(zone.kind))) {
    reading.assumptions.push({
      origin,
      what: 'zones outside the tested envelope during the test',
      value: 'at outdoor pressure, doors to them shut',
      source: ourChoice('such spaces are vented; a tight one makes the house seem tighter here'),
    });
  }
  const preparation = readPreparation(reading, full.preparation ?? {}, house.names);
  return {
    airtightness: {
      origin,
      exponent,
      cases,
      guarded: full.guarded ?? false,
      direction: full.direction ?? 'not stated',
    },
    preparation,
  };
}

function readCases(
  result: ResultInFile,
  house: { readonly exponent: number; readonly volumeM3: number },
): readonly AirtightnessCase[] {
  const one = (name: AirtightnessCase['name'], typed: TightnessInFile): AirtightnessCase => ({
    name,
    ...flowOf(typed, house),
  });
  if (result.upTo !== undefined) {
    return [one('tight end', result.from), one('loose end', result.upTo)];
  }
  return [one(result.planned ? 'planned' : 'tested', result.from)];
}

function flowOf(
  typed: TightnessInFile,
  { exponent, volumeM3 }: { readonly exponent: number; readonly volumeM3: number },
): Pick<AirtightnessCase, 'volumeFlowM3PerS' | 'pressurePa'> {
  switch (typed.kind) {
    case 'flow':
      return { volumeFlowM3PerS: typed.volumeFlowM3PerS, pressurePa: typed.pressurePa };
    case 'airChanges':
      return { volumeFlowM3PerS: typed.changesPerS * volumeM3, pressurePa: typed.pressurePa };
    case 'area':
      return flowOfArea(typed, exponent);
  }
}

function flowOfArea(
  area: LeakageAreaBasis & { readonly areaM2: number },
  exponent: number,
): Pick<AirtightnessCase, 'volumeFlowM3PerS' | 'pressurePa'> {
  const coefficientM3PerSPaN = coefficientFromLeakageArea({ ...area, exponent });
  const pressurePa = area.referencePressurePa;
  return {
    volumeFlowM3PerS: flowAtPressure({ coefficientM3PerSPaN, exponent, pressurePa }),
    pressurePa,
  };
}

/** What a test that says little about itself is taken for. */
function assumeTest(
  reading: Reading,
  given: { readonly direction?: string | undefined; readonly guarded?: boolean | undefined },
): void {
  const origin = 'airtightness';
  reading.assumptions.push({
    origin,
    what: 'air of the tested flow',
    value: '20 °C and 101,325 Pa',
    source: commonPractice('test results are quoted for reference air'),
  });
  if (given.direction === undefined) {
    reading.assumptions.push({
      origin,
      what: 'direction of the test',
      value: 'not stated; flaps are taken as in a depressurization test',
      source: ourChoice('exhaust depressurizes'),
    });
  }
  if (given.guarded === undefined) {
    reading.assumptions.push({
      origin,
      what: 'guarding of the test',
      value: 'not guarded: leaks to neighbours are inside the result',
      source: commonPractice('neighbours are rarely pressurized during a test'),
    });
  }
}

function readPreparation(
  reading: Reading,
  typed: Readonly<Record<string, TestPreparation>>,
  names: HouseNames,
): ReadonlyMap<string, TestPreparation> {
  const modelled = [...names.openings, ...names.makeUp, ...names.devices];
  const others = [...names.appliances, ...names.drivers].filter((each) => !modelled.includes(each));
  const preparation = new Map<string, TestPreparation>();
  for (const [name, stand] of Object.entries(typed)) {
    const path = ['airtightness', 'preparation', name];
    const plain = name.trim();
    if (modelled.includes(plain)) {
      preparation.set(plain, stand);
    } else if (others.includes(plain)) {
      warn(reading, path, {
        code: 'airtightness.preparation-without-effect',
        parameters: { name: plain },
      });
    } else {
      const known = [...modelled, ...others];
      const what = 'opening, device or make-up opening';
      reportUnknown(reading, { name: plain, path, what, known });
    }
  }
  return preparation;
}
