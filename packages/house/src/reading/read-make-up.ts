import { makeUpFile } from '../file/make-up-file.js';
import type { MakeUpOpening, TestPreparation } from '../house.js';
import { readInterlock } from './read-interlock.js';
import { readOpeningLaw } from './read-law.js';
import { readOffLaw } from './read-off-law.js';
import { readPlace, type HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { readStand } from './read-stand.js';
import { originOf, readValue, type Reading } from './reading.js';

/**
 * Reads the make-up air openings.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `makeUp`
 * @param house - zones, names, and the preparation of the test
 * @returns openings in the order of the file; wrong ones are left out
 */
export function readMakeUp(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar & { readonly preparation: ReadonlyMap<string, TestPreparation> },
): readonly MakeUpOpening[] {
  return items.flatMap(({ name, path, raw }) => {
    const inFile = readValue(reading, makeUpFile, { path, raw: raw ?? {} });
    if (inFile === undefined) return [];
    const place = readPlace(reading, house, { inFile, path });
    const openLaw = readOpeningLaw(reading, { inFile, path });
    const duringTest = readStand(reading, house.preparation, {
      name,
      path,
      given: inFile.duringTest,
      assumed: 'closed',
      matters: inFile.closedLeakage !== undefined,
    });
    const closedLaw = readOffLaw(reading, { inFile, path, duringTest, hasFlow: true });
    const interlock = readInterlock(reading, house.names, {
      inFile: inFile.opensWith,
      path: [...path, 'opensWith'],
      name,
    });
    if (place === undefined || openLaw === undefined || interlock === undefined) return [];
    return [
      {
        id: name,
        origin: originOf(path),
        ...place,
        openLaw,
        ...(closedLaw === undefined ? {} : { closedLaw }),
        duringTest,
        interlock,
      },
    ];
  });
}
