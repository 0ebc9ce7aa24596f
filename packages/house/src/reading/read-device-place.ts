import type { IssuePath } from '@evendraft/text';
import type { DeviceInFile } from '../file/device-file.js';
import { plainWord } from '../file/schema/word.js';
import type { DeviceKind } from '../house.js';
import { indoorsWord, reportUnknown } from './house-names.js';
import { readPlace, type HouseSoFar, type ReadPlace } from './read-place.js';
import { originOf, type Reading } from './reading.js';
import { commonPractice, ourChoice } from './sources.js';

/**
 * Where a device stands and ends. An attic fan stands in the attic; what gives its air back indoors moves none
 * in or out.
 *
 * @param reading - where issues and assumptions are collected
 * @param house - zones and names
 * @param device - what the file says, its kind, and where it stands in the file
 * @returns the place, or `indoors`; `undefined` where something is wrong, which is then reported
 */
export function placeOfDevice(
  reading: Reading,
  house: HouseSoFar,
  device: {
    readonly inFile: DeviceInFile;
    readonly kind: DeviceKind;
    readonly path: IssuePath;
  },
): ReadPlace | 'indoors' | undefined {
  const { inFile, kind, path } = device;
  const origin = originOf(path);
  if (inFile.to !== undefined && plainWord(inFile.to) === indoorsWord) {
    reading.assumptions.push({
      origin,
      what: 'air that it moves in or out',
      value: 'none: it gives its air back to the house',
      source: ourChoice('the file says that it ends indoors'),
    });
    return 'indoors';
  }
  if (kind === 'subslab fan') {
    reading.assumptions.push({
      origin,
      what: 'where its air comes from',
      value: 'all of its flow from its zone, none from the soil',
      source: ourChoice(
        'the greater suction; write the part that comes from the house as its flow',
      ),
    });
  }
  if (kind !== 'attic fan' || inFile.zone !== undefined) {
    return readPlace(reading, house, { inFile, path });
  }
  const attic = house.zones.find(({ zone }) => zone.kind === 'attic')?.zone.id;
  if (attic === undefined) {
    const known = house.names.zones;
    reportUnknown(reading, { name: 'attic', path: [...path, 'kind'], what: 'zone', known });
    return undefined;
  }
  reading.assumptions.push({
    origin,
    what: 'zone',
    value: attic,
    source: commonPractice('an attic fan draws from the attic'),
  });
  return readPlace(reading, house, { inFile: { ...inFile, zone: attic }, path });
}
