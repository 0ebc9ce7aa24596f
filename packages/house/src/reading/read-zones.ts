import { zoneFile, type ZoneInFile } from '../file/zone-file.js';
import { insideZoneKinds, type Zone, type ZoneKind } from '../house.js';
import { kindNames } from '../kind-names.js';
import type { Basics } from './read-basics.js';
import { readKind } from './read-kind.js';
import type { RawItem } from './read-section.js';
import { givenOr, originOf, readValue, report, type Reading } from './reading.js';
import { commonPractice, ourChoice } from './sources.js';
import { onlyZone } from './house-names.js';

/** A zone in SI with what the file says of its leakage. */
export interface ZoneRead {
  readonly zone: Zone;
  readonly item: RawItem;
  readonly inFile: ZoneInFile;
  /** Whether its volume follows from what the user gave, without an assumption. */
  readonly sizeGiven: boolean;
}

/** Floor to ceiling where nothing is given [m]. */
export const assumedCeilingHeightM = 2.5;

/** Height and floor area of zones that give none; our choice. */
const assumedSizes: Readonly<Record<ZoneKind, { heightM: number; areaM2?: number }>> = {
  living: { heightM: assumedCeilingHeightM },
  basement: { heightM: 2.2 },
  closet: { heightM: assumedCeilingHeightM, areaM2: 2 },
  attic: { heightM: 1.5, areaM2: 80 },
  garage: { heightM: assumedCeilingHeightM, areaM2: 36 },
  'crawl space': { heightM: 1, areaM2: 80 },
  shaft: { heightM: 3, areaM2: 1 },
};

/**
 * Reads the zones. A house without any is one zone.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - the items of the section `zones`
 * @param basics - what is known of the house as a whole
 * @returns zones in the order of the file; wrong ones are left out
 */
export function readZones(
  reading: Reading,
  items: readonly RawItem[],
  basics: Basics,
): readonly ZoneRead[] {
  if (items.length === 0) return oneZone(reading, basics);
  const typed = items.flatMap((item) => {
    const raw = item.raw ?? {};
    const inFile = readValue(reading, zoneFile, { path: item.path, raw });
    if (inFile === undefined) return [];
    const { name, path } = item;
    const kind = readKind(reading, kindNames.zones, { name, path, given: inFile.kind });
    return kind === undefined ? [] : [{ item, inFile, kind }];
  });
  const insideCount = typed.filter(({ kind }) => kind === 'living' || kind === 'basement').length;
  // An attic stands on the highest ceiling, so the others are placed first.
  const placed = typed.map((each) => {
    const heightM = zoneHeight(reading, each, basics);
    return { ...each, heightM };
  });
  const tops = placed
    .filter(({ kind }) => kind === 'living')
    .map(({ inFile, heightM }) => (inFile.floorHeight ?? 0) + heightM);
  return placed.flatMap(({ item, inFile, kind, heightM }) => {
    const origin = originOf(item.path);
    const floorHeightM = givenOr(reading, inFile.floorHeight, {
      origin,
      what: 'floor height above the lowest living floor',
      value: { si: assumedFloor(kind, heightM, tops), dimension: 'length' },
      source: ourChoice(
        'attics on the highest ceiling, basements and crawl spaces below the floor',
      ),
    });
    const areaM2 = zoneArea(reading, { item, inFile, kind, insideCount, basics });
    if (areaM2 === undefined && inFile.volume === undefined) return [];
    const zone: Zone = {
      id: item.name,
      origin,
      kind,
      floorHeightM,
      heightM,
      volumeM3: inFile.volume ?? (areaM2 ?? 0) * heightM,
      temperatureC: zoneTemperature(reading, { inFile, kind, origin, basics }),
    };
    const heightGiven = inFile.height !== undefined || basics.ceilingHeightM !== undefined;
    const sizeGiven = inFile.volume !== undefined || (inFile.area !== undefined && heightGiven);
    return [{ zone, item, inFile, sizeGiven }];
  });
}

interface TypedZone {
  readonly item: RawItem;
  readonly inFile: ZoneInFile;
  readonly kind: ZoneKind;
}

function zoneHeight(reading: Reading, { item, inFile, kind }: TypedZone, basics: Basics): number {
  const common = insideZoneKinds.includes(kind) ? basics.ceilingHeightM : undefined;
  return givenOr(reading, inFile.height ?? common, {
    origin: originOf(item.path),
    what: 'height from floor to ceiling',
    value: { si: assumedSizes[kind].heightM, dimension: 'length' },
    source: commonPractice('usual height of such a space'),
  });
}

function assumedFloor(kind: ZoneKind, heightM: number, tops: readonly number[]): number {
  if (kind === 'attic') return tops.length === 0 ? 0 : Math.max(...tops);
  return kind === 'basement' || kind === 'crawl space' ? -heightM : 0;
}

function zoneArea(
  reading: Reading,
  zone: TypedZone & { readonly insideCount: number; readonly basics: Basics },
): number | undefined {
  const { item, inFile, kind, insideCount, basics } = zone;
  if (inFile.area !== undefined) return inFile.area;
  if (inFile.volume !== undefined) return undefined;
  const own = kind === 'living' || kind === 'basement';
  const si = own ? basics.floorAreaM2 : assumedSizes[kind].areaM2;
  if (own && insideCount > 1) {
    report(reading, item.path, { code: 'zone.size-missing', parameters: { name: item.name } });
    return undefined;
  }
  if (si === undefined) return undefined;
  reading.assumptions.push({
    origin: originOf(item.path),
    what: 'floor area',
    value: { si, dimension: 'area' },
    source: ourChoice(
      own ? 'the floor area of the house, which has no other living zone' : 'a common size',
    ),
  });
  return si;
}

function zoneTemperature(
  reading: Reading,
  zone: Pick<TypedZone, 'inFile' | 'kind'> & { readonly origin: string; readonly basics: Basics },
): number | 'outdoors' {
  const { inFile, kind, origin, basics } = zone;
  if (inFile.temperature !== undefined) return inFile.temperature;
  if (kind === 'attic' || kind === 'garage' || kind === 'crawl space') {
    const source = ourChoice('unheated spaces follow the weather');
    reading.assumptions.push({ origin, what: 'temperature', value: 'as outdoors', source });
    return 'outdoors';
  }
  return basics.indoorTemperatureC;
}

function oneZone(reading: Reading, basics: Basics): readonly ZoneRead[] {
  const { floorAreaM2 } = basics;
  const storeys = givenOr(reading, basics.storeys, {
    origin: 'storeys',
    what: 'number of storeys',
    value: { si: 1, dimension: 'ratio' },
    source: ourChoice('one storey where none is given'),
  });
  if (floorAreaM2 === undefined) return [];
  const known = basics.volumeM3 ?? basics.ceilingHeightM;
  if (known === undefined) {
    reading.assumptions.push({
      origin: 'ceilingHeight',
      what: 'height from floor to ceiling',
      value: { si: assumedCeilingHeightM, dimension: 'length' },
      source: commonPractice('usual height of a living space'),
    });
  }
  const volumeM3 =
    basics.volumeM3 ?? floorAreaM2 * (basics.ceilingHeightM ?? assumedCeilingHeightM);
  const zone: Zone = {
    id: onlyZone,
    origin: onlyZone,
    kind: 'living',
    floorHeightM: 0,
    heightM: (volumeM3 / floorAreaM2) * storeys,
    volumeM3,
    temperatureC: basics.indoorTemperatureC,
  };
  const item = { name: onlyZone, path: [], raw: {} };
  return [{ zone, item, inFile: {}, sizeGiven: known !== undefined }];
}
