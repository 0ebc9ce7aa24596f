import { openingFile, type OpeningInFile } from '../file/opening-file.js';
import { insideZoneKinds, type Opening, type TestPreparation } from '../house.js';
import type { IssuePath } from '@evendraft/text';
import type { RawItem } from './read-section.js';
import { readInlet, type ReadInlet } from './read-inlet.js';
import { readPlace, type HouseSoFar, type ReadPlace } from './read-place.js';
import { readStand } from './read-stand.js';
import { originOf, readValue, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

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
    const positions = readPositions(reading, inFile, path);
    const canShut = positions.positions?.includes('shut') ?? false;
    const duringTest = readStand(reading, house.preparation, {
      name,
      path,
      given: inFile.duringTest,
      assumed: canShut ? 'closed' : 'open',
      matters: place !== undefined && leadsOutside(house, place),
    });
    if (inFile.closedLeakage !== undefined && inFile.damper === undefined) {
      const parameters = { key: 'closedLeakage', way: 'an opening without damper' };
      report(reading, [...path, 'closedLeakage'], { code: 'key.without-effect', parameters });
    }
    const inlet = readInlet(reading, { inFile, path, duringTest, motorized: false });
    if (place === undefined || inlet === undefined) return [];
    const { endHeight: endHeightM } = inFile;
    const rise = readRise(reading, { endHeightM, heightM: place.heightM, path, inlet });
    return [
      { id: name, origin: originOf(path), ...place, ...inlet, ...rise, ...positions, duringTest },
    ];
  });
}

/**
 * The rise of an opening whose other end is given by its height: that of a shaft or a vertical duct.
 *
 * @param reading - where issues are collected
 * @param opening - height of the other end as given and of the opening itself [m], where it stands, its laws
 * @returns the rise on the way in, where there is one
 */
export function readRise(
  reading: Reading,
  opening: {
    readonly endHeightM: number | undefined;
    readonly heightM: number;
    readonly path: IssuePath;
    readonly inlet: ReadInlet;
  },
): Pick<Opening, 'riseM'> {
  const { endHeightM, heightM, path, inlet } = opening;
  if (endHeightM === undefined) return {};
  const { riseM = 0, parts = [] } = inlet;
  if (riseM !== 0 || parts.some((part) => part.riseM !== 0)) {
    const parameters = { key: 'endHeight', way: 'rise of its duct' };
    report(reading, [...path, 'endHeight'], { code: 'key.without-effect', parameters });
    return {};
  }
  return endHeightM === heightM ? {} : { riseM: heightM - endHeightM };
}

/** Positions of a window; none of what is always open. */
function readPositions(
  reading: Reading,
  { positions: typed, baseline }: OpeningInFile,
  path: IssuePath,
): Pick<Opening, 'positions' | 'baselinePosition'> {
  const list = typeof typed === 'string' ? [typed] : (typed ?? []);
  if (list.length === 0) {
    if (baseline !== undefined) {
      const parameters = { key: 'baseline', way: 'an opening without positions' };
      report(reading, [...path, 'baseline'], { code: 'key.without-effect', parameters });
    }
    return {};
  }
  const positions = [...new Set(list)];
  if (baseline !== undefined) return { positions, baselinePosition: baseline };
  const assumed = positions.includes('shut') ? 'shut' : 'open';
  reading.assumptions.push({
    origin: originOf(path),
    what: 'position in the baseline',
    value: assumed,
    source: ourChoice('windows are shut unless the study has them open'),
  });
  return { positions, baselinePosition: assumed };
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
