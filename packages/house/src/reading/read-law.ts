import { checkFlowLaw, type FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import {
  oneWayLaw,
  openingLaws,
  type LawAssumption,
  type OpeningLawInFile,
} from '../file/opening-law.js';
import type { AssumedDimension, Source } from '../house.js';
import { originOf, report, type Reading } from './reading.js';
import { dischargeSource, exponentSource, louvreSource, opensAtSource } from './sources.js';

/**
 * The law of an opening, from the one way in which it is written.
 *
 * @param reading - where issues and assumptions are collected
 * @param item - what the file says, and where
 * @returns the law; `undefined` where no way or several are used, which is then reported
 */
export function readOpeningLaw(
  reading: Reading,
  item: { readonly inFile: OpeningLawInFile; readonly path: IssuePath },
): FlowLawDescription | undefined {
  const { inFile, path } = item;
  const ways = openingLaws.filter((way) => inFile[way.key] !== undefined);
  const [way, second] = ways;
  if (way === undefined) {
    const accepted = openingLaws.map(({ example }) => example);
    report(reading, path, { code: 'opening.law-missing', parameters: { accepted } });
    return undefined;
  }
  if (second !== undefined) {
    const parameters = { keys: ways.map(({ key }) => key) };
    report(reading, [...path, second.key], { code: 'opening.several-laws', parameters });
    return undefined;
  }
  for (const key of ['dischargeCoefficient', 'exponent', 'louvre'] as const) {
    if (inFile[key] !== undefined && !way.beside.includes(key)) {
      const parameters = { key, way: way.key };
      report(reading, [...path, key], { code: 'key.without-effect', parameters });
    }
  }
  const made = way.make(inFile);
  if (made === undefined) return undefined;
  assumeForLaw(reading, path, made.assumed);
  if (inFile.opensAt === undefined && inFile.oneWay !== true) {
    return checkLaw(reading, path, made.law);
  }
  if (inFile.oneWay === false) {
    const parameters = { key: 'opensAt', way: 'oneWay: false' };
    report(reading, [...path, 'opensAt'], { code: 'key.without-effect', parameters });
    return undefined;
  }
  const flap = oneWayLaw(made.law, inFile.opensAt);
  assumeForLaw(reading, path, flap.assumed);
  return checkLaw(reading, path, flap.law);
}

/**
 * A law that can be computed with; what the table of laws finds wrong with it is reported.
 *
 * @param reading - where issues are collected
 * @param path - where the item stands
 * @param law - the law
 * @returns the law; `undefined` if it is out of range
 */
export function checkLaw(
  reading: Reading,
  path: IssuePath,
  law: FlowLawDescription,
): FlowLawDescription | undefined {
  const problems = checkFlowLaw(law).filter(({ severity }) => severity === 'error');
  for (const { code, field, found, allowed } of problems) {
    if (code === 'RisingFanCurve') {
      report(reading, path, { code: 'device.curve-rising', parameters: {} });
    } else if (code === 'FanPointsShareARise') {
      report(reading, path, { code: 'device.curve-flat', parameters: { risePa: found } });
    } else if (code === 'FanCurveTooShort') {
      report(reading, path, { code: 'device.curve-too-short', parameters: {} });
    } else {
      report(reading, path, { code: 'law.out-of-range', parameters: { field, found, allowed } });
    }
  }
  return problems.length === 0 ? law : undefined;
}

const assumedIn: Readonly<
  Record<LawAssumption['what'], { readonly dimension: AssumedDimension; readonly source: Source }>
> = {
  'discharge coefficient': { dimension: 'ratio', source: dischargeSource },
  'flow exponent': { dimension: 'ratio', source: exponentSource },
  'free share of its louvre': { dimension: 'ratio', source: louvreSource },
  'opening pressure': { dimension: 'pressure', source: opensAtSource },
};

function assumeForLaw(reading: Reading, path: IssuePath, assumed: readonly LawAssumption[]): void {
  for (const { what, value } of assumed) {
    const { dimension, source } = assumedIn[what];
    const origin = originOf(path);
    reading.assumptions.push({ origin, what, value: { si: value, dimension }, source });
  }
}
