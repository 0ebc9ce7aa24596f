import type { Device, MakeUpOpening } from '../house.js';
import { report, type Reading } from '../reading/reading.js';

/**
 * Checks that a plenum through a hood stands where its hood stands.
 *
 * @param reading - where issues are collected
 * @param devices - the devices
 * @param makeUpOpenings - the make-up openings
 */
export function checkPlenums(
  reading: Reading,
  devices: readonly Device[],
  makeUpOpenings: readonly MakeUpOpening[],
): void {
  for (const { id, zone, throughHood } of makeUpOpenings) {
    const hood = devices.find((device) => device.id === throughHood);
    if (hood === undefined || hood.zone === zone) continue;
    const parameters = { hood: hood.id, zone: hood.zone };
    report(reading, ['makeUp', id, 'throughHood'], { code: 'plenum.other-zone', parameters });
  }
}
