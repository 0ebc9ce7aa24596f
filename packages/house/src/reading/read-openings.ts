import { openingFile } from '../file/opening-file.js';
import { insideZoneKinds, type Opening, type TestPreparation } from '../house.js';
import type { RawItem } from './read-section.js';
import { readOpeningLaw } from './read-law.js';
import { readPlace, type HouseSoFar, type ReadPlace } from './read-place.js';
import { readStand } from './read-stand.js';
import { originOf, readValue, type Reading } from './reading.js';

/**
 * Reads the holes that are always there.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `openings`
 * @param house - zones, names, and the preparation of the test
 * @returns openings in the order of the file; wrong ones are left out
 */
export function readOpenings(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar & { readonly preparation: ReadonlyMap<string, TestPreparation> },
): readonly Opening[] {
  return items.flatMap(({ name, path, raw }) => {
    const inFile = readValue(reading, openingFile, { path, raw: raw ?? {} });
    if (inFile === undefined) return [];
    const place = readPlace(reading, house, { inFile, path });
    const law = readOpeningLaw(reading, { inFile, path });
    const duringTest = readStand(reading, house.preparation, {
      name,
      path,
      given: inFile.duringTest,
      assumed: 'open',
      matters: place !== undefined && leadsOutside(house, place),
    });
    if (place === undefined || law === undefined) return [];
    const { endHeight } = inFile;
    const column =
      endHeight === undefined || endHeight === place.heightM ? {} : { endHeightM: endHeight };
    return [{ id: name, origin: originOf(path), ...place, ...column, law, duringTest }];
  });
}

/**
 * Whether an opening was part of what an airtightness test measured.
 *
 * @param house - its zones
 * @param place - where the opening stands and ends
 * @returns whether it leads out of the tested envelope
 */
export function leadsOutside(
  { zones }: HouseSoFar,
  { zone, to }: Pick<ReadPlace, 'zone' | 'to'>,
): boolean {
  const isInside = (id: string): boolean =>
    zones.some((each) => each.zone.id === id && insideZoneKinds.includes(each.zone.kind));
  return isInside(zone) !== (to.kind === 'zone' && isInside(to.zone));
}
