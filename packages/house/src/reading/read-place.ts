import type { IssuePath } from '@evendraft/text';
import type { Outlet, Zone } from '../house.js';
import { findOutlet, findZone, type HouseNames } from './house-names.js';
import type { ZoneRead } from './read-zones.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/** What is known of a house once its zones are read. */
export interface HouseSoFar {
  readonly names: HouseNames;
  readonly zones: readonly ZoneRead[];
}

/** Where an opening or device stands and where it ends. */
export interface ReadPlace {
  readonly zone: string;
  readonly to: Outlet;
  readonly heightM: number;
}

/** What the file says of a place. */
export interface PlaceInFile {
  readonly zone?: string | undefined;
  readonly to?: string | undefined;
  readonly height?: number | undefined;
}

/**
 * The zone of an item: as given, else the first living zone.
 *
 * @param reading - where issues and assumptions are collected
 * @param house - zones and names
 * @param item - the zone as typed, where the item stands, and the key that names its zone
 * @returns name of the zone; `undefined` where there is none, which is then reported
 */
export function readZoneOf(
  reading: Reading,
  house: HouseSoFar,
  item: {
    readonly given: string | undefined;
    readonly path: IssuePath;
    readonly key?: 'zone' | 'supplyZone' | 'exhaustZone';
  },
): string | undefined {
  const { given, path, key = 'zone' } = item;
  if (given !== undefined) {
    return findZone(reading, house.names, { name: given, path: [...path, key] });
  }
  const living = house.zones.filter(({ zone }) => zone.kind === 'living');
  const first = living[0]?.zone.id ?? house.names.zones[0];
  if (first === undefined) return undefined;
  // In a house of one zone there is nothing to assume.
  if (house.names.zones.length > 1) {
    const words = key === 'zone' ? 'zone' : key === 'supplyZone' ? 'supply zone' : 'exhaust zone';
    const reason = living.length > 1 ? 'the first living zone' : 'the only living zone';
    reading.assumptions.push({
      origin: originOf(path),
      what: words,
      value: first,
      source: ourChoice(reason),
    });
  }
  return first;
}

/**
 * Where an item stands and ends: as given, else in the first living zone, at mid-height, to outdoors.
 *
 * @param reading - where issues and assumptions are collected
 * @param house - zones and names
 * @param item - what the file says, and where it stands
 * @returns the place; `undefined` where something is wrong, which is then reported
 */
export function readPlace(
  reading: Reading,
  house: HouseSoFar,
  item: { readonly inFile: PlaceInFile; readonly path: IssuePath },
): ReadPlace | undefined {
  const { inFile, path } = item;
  const origin = originOf(path);
  const zone = readZoneOf(reading, house, { given: inFile.zone, path });
  const to = readOutlet(reading, house.names, item);
  if (zone === undefined || to === undefined) return undefined;
  if (leadsToItself(reading, { zone, to, path })) return undefined;
  const room: Zone | undefined = house.zones.find((each) => each.zone.id === zone)?.zone;
  checkBelowCeiling(reading, room, { heightM: inFile.height, path });
  const heightM = givenOr(reading, inFile.height, {
    origin,
    what: 'height above the floor',
    value: { si: (room?.heightM ?? 0) / 2, dimension: 'length' },
    source: ourChoice('the middle of its zone'),
  });
  return { zone, to, heightM };
}

/**
 * Reports an opening that ends where it begins.
 *
 * @param reading - where issues are collected
 * @param opening - its zone, where it ends, and where it stands
 * @returns whether it does
 */
export function leadsToItself(
  reading: Reading,
  opening: { readonly zone: string; readonly to: Outlet; readonly path: IssuePath },
): boolean {
  const { zone, to, path } = opening;
  if (to.kind !== 'zone' || to.zone !== zone) return false;
  const parameters = { what: 'opening', zone };
  report(reading, [...path, 'to'], { code: 'reference.own-zone', parameters });
  return true;
}

/**
 * Reports a height above the ceiling of its zone.
 *
 * @param reading - where issues are collected
 * @param room - the zone, if it could be read
 * @param item - height above the floor as given [m], and where the item stands
 */
export function checkBelowCeiling(
  reading: Reading,
  room: Zone | undefined,
  item: {
    readonly heightM: number | undefined;
    readonly path: IssuePath;
    /** Key that holds the height; `height` when absent. */
    readonly key?: string;
  },
): void {
  const { heightM, path, key = 'height' } = item;
  if (heightM === undefined || room === undefined || heightM <= room.heightM + 1e-9) return;
  const parameters = { zone: room.id, heightM, ceilingM: room.heightM };
  report(reading, [...path, key], { code: 'height.above-ceiling', parameters });
}

/**
 * Where an item ends: as given, else outdoors in calm air.
 *
 * @param reading - where issues and assumptions are collected
 * @param names - every name of the house
 * @param item - what the file says, and where it stands
 * @returns the outlet; `undefined` where there is no such place, which is then reported
 */
export function readOutlet(
  reading: Reading,
  names: HouseNames,
  { inFile, path }: { readonly inFile: PlaceInFile; readonly path: IssuePath },
): Outlet | undefined {
  if (inFile.to !== undefined) {
    return findOutlet(reading, names, { name: inFile.to, path: [...path, 'to'] });
  }
  reading.assumptions.push({
    origin: originOf(path),
    what: 'where it ends',
    value: 'outdoors, in calm air',
    source: ourChoice('a face of the house would need to be named'),
  });
  return { kind: 'outdoors' };
}
