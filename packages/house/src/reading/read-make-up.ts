import type { IssuePath } from '@evendraft/text';
import { makeUpFile } from '../file/make-up-file.js';
import type { MakeUpOpening, TestPreparation } from '../house.js';
import { readDiffuser } from './read-diffuser.js';
import { readInterlock } from './read-interlock.js';
import { readInlet } from './read-inlet.js';
import { readPlace, type HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { readStand } from './read-stand.js';
import { reportUnknown, type HouseNames } from './house-names.js';
import { originOf, readValue, report, type Reading } from './reading.js';

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
    const duringTest = readStand(reading, house.preparation, {
      name,
      path,
      given: inFile.duringTest,
      assumed: 'closed',
      matters: inFile.closedLeakage !== undefined,
    });
    const inlet = readInlet(reading, { inFile, path, duringTest, motorized: true });
    const throughHood = readHood(reading, house.names, { inFile, path });
    const interlock = readInterlock(reading, house.names, {
      inFile: inFile.opensWith,
      path: [...path, 'opensWith'],
      name,
    });
    if (place === undefined || inlet === undefined || interlock === undefined) return [];
    const { law: openLaw, ...series } = inlet;
    return [
      {
        id: name,
        origin: originOf(path),
        ...place,
        openLaw,
        ...series,
        ...(throughHood === undefined ? {} : { throughHood }),
        ...readDiffuser(inFile),
        duringTest,
        interlock,
      },
    ];
  });
}

/** The hood that a plenum belongs to; its face area is then needed, because the face velocity is the question. */
function readHood(
  reading: Reading,
  names: HouseNames,
  {
    inFile,
    path,
  }: {
    readonly inFile: { readonly throughHood?: string | undefined; readonly faceArea?: unknown };
    readonly path: IssuePath;
  },
): string | undefined {
  const { throughHood: hood, faceArea } = inFile;
  if (hood === undefined) return undefined;
  const at = [...path, 'throughHood'];
  if (!names.devices.includes(hood)) {
    reportUnknown(reading, { name: hood, path: at, what: 'device', known: names.devices });
    return undefined;
  }
  if (faceArea === undefined) {
    report(reading, at, { code: 'plenum.face-area-missing', parameters: {} });
  }
  return hood;
}
