import { formatQuantity, inUnit } from '@evendraft/units';
import type { IssuePath } from '@evendraft/text';
import { insideZoneKinds, type AssumedDimension, type House } from '../house.js';
import { warn, type Reading } from '../reading/reading.js';
import type { ZoneRead } from '../reading/read-zones.js';

/** A range outside of which a value is probably a slip; our choice throughout. */
interface UsualRange {
  readonly from: number;
  readonly to: number;
}

const usual = {
  floorAreaM2: { from: 15, to: 1500 },
  volumeM3: { from: 30, to: 5000 },
  heightM: { from: 1.8, to: 8 },
  deviceFlowM3PerS: { from: 0.002, to: 1 },
  airingFlowM3PerS: { from: 0.05, to: 5 },
  airChangesPerH: { from: 0.05, to: 40 },
  indoorC: { from: 5, to: 35 },
} as const satisfies Readonly<Record<string, UsualRange>>;

/**
 * Warns of values that are possible but so unusual that they are probably slips of the keyboard.
 *
 * @param reading - where issues are collected
 * @param house - the house that was read
 * @param zones - its zones with their places in the file
 */
export function checkMagnitudes(
  reading: Reading,
  house: Omit<House, 'assumptions' | 'digest'>,
  zones: readonly ZoneRead[],
): void {
  const check = (
    path: IssuePath,
    value: { readonly what: string; readonly si: number; readonly dimension: AssumedDimension },
    range: UsualRange,
  ): void => {
    if (value.si >= range.from && value.si <= range.to) return;
    const { what, si, dimension } = value;
    const print = (number: number): string =>
      `${formatQuantity(number, dimension, { system: 'us' })} (${formatQuantity(number, dimension, { system: 'si' })})`;
    warn(reading, path, {
      code: 'size.unusual',
      parameters: { what, found: print(si), from: print(range.from), to: print(range.to) },
    });
  };
  const { floorAreaM2, volumeM3 } = house;
  check(
    ['floorArea'],
    { what: 'floor area of the house', si: floorAreaM2, dimension: 'area' },
    usual.floorAreaM2,
  );
  check(
    ['volume'],
    { what: 'volume of the house', si: volumeM3, dimension: 'volume' },
    usual.volumeM3,
  );
  for (const { zone, item } of zones) {
    if (zone.kind !== 'living') continue;
    const path = item.path.length === 0 ? ['volume'] : [...item.path, 'height'];
    const what = `height of ${zone.id}`;
    // The only zone of a short file has one height for all its storeys.
    const to = item.path.length === 0 ? usual.heightM.to * 2 : usual.heightM.to;
    check(path, { what, si: zone.heightM, dimension: 'length' }, { from: usual.heightM.from, to });
    if (typeof zone.temperatureC === 'number') {
      const temperature = `temperature of ${zone.id}`;
      const where = item.path.length === 0 ? ['indoorTemperature'] : [...item.path, 'temperature'];
      check(
        where,
        { what: temperature, si: zone.temperatureC, dimension: 'temperature' },
        usual.indoorC,
      );
    }
  }
  for (const { id, kind, direction, speeds } of house.devices) {
    const top = speeds.at(-1);
    if (top === undefined) continue;
    const value = {
      what: `flow of ${id}`,
      si: top.ratedFlowM3PerS,
      dimension: 'volumeFlow',
    } as const;
    // Fans that air a whole house or attic move far more than a hood.
    const airs = ['summer cooling fan', 'attic fan', 'evaporative cooler'].includes(kind);
    check([direction, id], value, airs ? usual.airingFlowM3PerS : usual.deviceFlowM3PerS);
  }
  checkAirtightness(reading, house);
  checkAreas(reading, floorAreaM2, zones);
}

function checkAirtightness(
  reading: Reading,
  { airtightness, volumeM3 }: Pick<House, 'airtightness' | 'volumeM3'>,
): void {
  for (const test of airtightness.cases) {
    const at50 = test.volumeFlowM3PerS * (50 / test.pressurePa) ** airtightness.exponent;
    const changes = inUnit(at50 / volumeM3, 'airChangeRate', 'ACH50');
    const { from, to } = usual.airChangesPerH;
    if (changes >= from && changes <= to) continue;
    warn(reading, ['airtightness'], {
      code: 'size.unusual',
      parameters: {
        what: 'airtightness',
        found: `${changes.toPrecision(2)} ACH50`,
        from: `${from} ACH50`,
        to: `${to} ACH50`,
      },
    });
  }
}

/** The zones' areas against the floor area of the house; a basement may be counted in it or not. */
function checkAreas(reading: Reading, floorAreaM2: number, zones: readonly ZoneRead[]): void {
  const inside = zones.filter(({ zone }) => insideZoneKinds.includes(zone.kind));
  if (inside.some(({ inFile }) => inFile.area === undefined)) return;
  const sum = (list: readonly ZoneRead[]): number =>
    list.reduce((total, { inFile }) => total + (inFile.area ?? 0), 0);
  const all = sum(inside);
  const withoutBasement = sum(inside.filter(({ zone }) => zone.kind !== 'basement'));
  const agrees = (area: number): boolean => Math.abs(area - floorAreaM2) <= 0.2 * floorAreaM2;
  if (inside.length === 0 || agrees(all) || agrees(withoutBasement)) return;
  const print = (area: number): string =>
    `${formatQuantity(area, 'area', { system: 'us' })} (${formatQuantity(area, 'area', { system: 'si' })})`;
  warn(reading, ['floorArea'], {
    code: 'size.areas-disagree',
    parameters: { house: print(floorAreaM2), zones: print(all) },
  });
}
