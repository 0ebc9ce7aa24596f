import { typicalFans, type TypicalFanKind } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { DeviceInFile } from '../file/device-file.js';
import type { DeviceKind } from '../house.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { ourChoice, sourceOf } from './sources.js';

/** Pressures of a fan of which otherwise only the flow is known. */
export interface FanPressures {
  readonly ratingPressurePa: number;
  readonly shutOffPressurePa: number;
}

/** The typical fan of each kind of device. */
const typicalFanOf: Readonly<Record<Exclude<DeviceKind, 'condensing dryer'>, TypicalFanKind>> = {
  hood: 'range hood',
  downdraft: 'downdraft',
  dryer: 'dryer',
  'bath fan': 'bath fan',
  'central vacuum': 'central vacuum',
  'exhaust fan': 'other fan',
  'supply fan': 'inline fan',
  'attic fan': 'other fan',
  'summer cooling fan': 'other fan',
  'subslab fan': 'other fan',
  'evaporative cooler': 'inline fan',
};

/**
 * Rating pressure and shut-off pressure of a device: as given, else typical of its kind.
 *
 * An assumed pressure gives way to a given one: an assumed rating stays at half of a given shut-off at
 * most, an assumed shut-off at twice a given rating at least.
 *
 * @param reading - where issues and assumptions are collected
 * @param device - what the file says, its kind, and where it stands
 * @returns both pressures [Pa]; `undefined` where the given ones contradict each other
 */
export function readFanPressures(
  reading: Reading,
  device: {
    readonly inFile: DeviceInFile;
    readonly kind: Exclude<DeviceKind, 'condensing dryer'>;
    readonly path: IssuePath;
  },
): FanPressures | undefined {
  return pressuresOf(reading, { ...device, fan: typicalFanOf[device.kind] });
}

/**
 * Rating pressure and shut-off pressure of a booster fan: as given, else typical of an inline fan.
 *
 * @param reading - where issues and assumptions are collected
 * @param inFile - what the file says
 * @param path - where it stands
 * @returns both pressures [Pa]; `undefined` where the given ones contradict each other
 */
export function readBoosterPressures(
  reading: Reading,
  inFile: PressuresInFile,
  path: IssuePath,
): FanPressures | undefined {
  return pressuresOf(reading, { inFile, path, fan: 'inline fan' });
}

type PressuresInFile = Pick<DeviceInFile, 'ratingPressure' | 'shutOffPressure'>;

function pressuresOf(
  reading: Reading,
  of: {
    readonly inFile: PressuresInFile;
    readonly fan: TypicalFanKind;
    readonly path: IssuePath;
  },
): FanPressures | undefined {
  const { inFile, fan, path } = of;
  const origin = originOf(path);
  const typical = typicalFans[fan];
  const { ratingPressure: rating, shutOffPressure: shutOff } = inFile;
  if (rating !== undefined && shutOff !== undefined && rating >= shutOff) {
    report(reading, [...path, 'ratingPressure'], {
      code: 'device.rating-above-shut-off',
      parameters: { ratingPa: rating, shutOffPa: shutOff },
    });
    return undefined;
  }
  const lowShutOff = shutOff !== undefined && typical.rating.pressurePa > shutOff / 2;
  const ratingPressurePa = givenOr(reading, rating, {
    origin,
    what: 'rating pressure',
    value: { si: lowShutOff ? shutOff / 2 : typical.rating.pressurePa, dimension: 'pressure' },
    source: lowShutOff ? ourChoice('half of the given shut-off') : sourceOf(typical.rating),
  });
  const highRating = rating !== undefined && typical.shutOff.pressurePa < 2 * rating;
  const shutOffPressurePa = givenOr(reading, shutOff, {
    origin,
    what: 'shut-off pressure',
    value: { si: highRating ? 2 * rating : typical.shutOff.pressurePa, dimension: 'pressure' },
    source: highRating ? ourChoice('twice the given rating') : sourceOf(typical.shutOff),
  });
  return { ratingPressurePa, shutOffPressurePa };
}
