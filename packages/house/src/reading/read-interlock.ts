import type { IssuePath } from '@evendraft/text';
import type { InterlockInFile } from '../file/interlock-file.js';
import type { Interlock } from '../house.js';
import { reportUnknown, type HouseNames } from './house-names.js';
import { report, type Reading } from './reading.js';

/**
 * Reads what drives a device or opening; its speeds are checked once all devices are read.
 *
 * @param reading - where issues are collected
 * @param names - every name of the house
 * @param follower - what the file says, where, and the name of what follows
 * @returns the interlock; `undefined` where there is none or its driver is wrong
 */
export function readInterlock(
  reading: Reading,
  names: HouseNames,
  follower: {
    readonly inFile: InterlockInFile | undefined;
    readonly path: IssuePath;
    readonly name: string;
  },
): Interlock | undefined {
  const { inFile, path, name } = follower;
  if (inFile === undefined) return undefined;
  const driver = typeof inFile === 'string' ? inFile : inFile.device;
  const speeds = typeof inFile === 'string' ? undefined : inFile.speeds;
  const at = typeof inFile === 'string' ? path : [...path, 'device'];
  if (driver === name) {
    report(reading, at, { code: 'interlock.self', parameters: { name } });
    return undefined;
  }
  if (!names.drivers.includes(driver)) {
    const what = 'device, ventilator, air handler or appliance';
    reportUnknown(reading, { name: driver, path: at, what, known: names.drivers });
    return undefined;
  }
  if (speeds === undefined) return { driver };
  return { driver, speeds: typeof speeds === 'string' ? [speeds] : [...new Set(speeds)] };
}
