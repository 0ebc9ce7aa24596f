import { combustionAirFile, type CombustionAirInFile } from '../file/combustion-air-file.js';
import type { Opening, Outlet, TestPreparation, Zone } from '../house.js';
import { findOutlet } from './house-names.js';
import { readInlet } from './read-inlet.js';
import { leadsOutside, readRise } from './read-openings.js';
import {
  checkBelowCeiling,
  leadsToItself,
  readOutlet,
  readZoneOf,
  type HouseSoFar,
} from './read-place.js';
import type { RawItem } from './read-section.js';
import { readStand } from './read-stand.js';
import { givenOr, originOf, readValue, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/** Distance of such an opening's centre from ceiling or floor where none is given: 6 in [m]. */
const fromEdgeM = 6 * 0.0254;

/**
 * Reads the openings that bring combustion air. Each high and each low one becomes an opening of its own.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `combustionAir`
 * @param house - zones, names, and the preparation of the test
 * @returns openings in the order of the file, high before low; wrong ones are left out
 */
export function readCombustionAir(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar & { readonly preparation: ReadonlyMap<string, TestPreparation> },
): readonly Opening[] {
  return items.flatMap((item) => {
    const { name, path, raw } = item;
    const inFile = readValue(reading, combustionAirFile, { path, raw: raw ?? {} });
    if (inFile === undefined) return [];
    if (inFile.high === undefined && inFile.low === undefined) {
      const accepted = ['high: 100 in2', 'low: 100 in2'];
      report(reading, path, { code: 'opening.law-missing', parameters: { accepted } });
      return [];
    }
    const zone = readZoneOf(reading, house, { given: inFile.zone, path });
    const ownEnds = [inFile.high, inFile.low].every(
      (each) => each === undefined || (typeof each === 'object' && each.to !== undefined),
    );
    const to = ownEnds ? undefined : readOutlet(reading, house.names, { inFile, path });
    const room = house.zones.find((each) => each.zone.id === zone)?.zone;
    if (room === undefined) return [];
    const duringTest = readStand(reading, house.preparation, {
      name,
      path,
      given: inFile.duringTest,
      assumed: 'open',
      matters: to === undefined || leadsOutside(house, { zone: room.id, to }),
    });
    return (['high', 'low'] as const).flatMap((position) =>
      readOne(reading, house, { item, typed: inFile[position], position, room, to, duringTest }),
    );
  });
}

type OpeningOfCombustionAir = Exclude<NonNullable<CombustionAirInFile['high']>, number>;

function readOne(
  reading: Reading,
  house: HouseSoFar,
  one: {
    readonly item: RawItem;
    readonly typed: CombustionAirInFile['high'];
    readonly position: 'high' | 'low';
    readonly room: Zone;
    /** Where both end, unless this one says otherwise. */
    readonly to: Outlet | undefined;
    readonly duringTest: TestPreparation;
  },
): readonly Opening[] {
  const { item, typed, position, room, duringTest } = one;
  if (typed === undefined) return [];
  const own: OpeningOfCombustionAir = typeof typed === 'number' ? { netFreeArea: typed } : typed;
  const path = [...item.path, position];
  const origin = originOf(path);
  const to =
    own.to === undefined
      ? one.to
      : findOutlet(reading, house.names, { name: own.to, path: [...path, 'to'] });
  const inlet = readInlet(reading, { inFile: own, path, duringTest, motorized: false });
  checkBelowCeiling(reading, room, { heightM: own.height, path });
  if (to === undefined || inlet === undefined) return [];
  const at = own.to === undefined ? item.path : path;
  if (leadsToItself(reading, { zone: room.id, to, path: at })) return [];
  const assumed = assumedHeight(house, { position, room, to });
  const heightM = givenOr(reading, own.height, {
    origin,
    what: 'height above the floor',
    value: { si: assumed.heightM, dimension: 'length' },
    source: ourChoice(assumed.reason),
  });
  const rises = [inlet, ...(inlet.parts ?? [])].some(({ riseM = 0 }) => riseM !== 0);
  const endHeightM =
    own.endHeight ??
    (rises ? undefined : nearestEnd(reading, house, { heightM, room, to, origin }));
  const rise = readRise(reading, { endHeightM, heightM, path, inlet });
  return [
    {
      id: `${item.name} ${position}`,
      origin,
      zone: room.id,
      to,
      heightM,
      combustionAir: position,
      ...inlet,
      ...rise,
      duringTest,
    },
  ];
}

/** In the ceiling or floor where the other zone lies beyond it, else close to it. */
function assumedHeight(
  { zones }: HouseSoFar,
  opening: { readonly position: 'high' | 'low'; readonly room: Zone; readonly to: Outlet },
): { readonly heightM: number; readonly reason: string } {
  const { position, room, to } = opening;
  const other =
    to.kind === 'zone' ? zones.find(({ zone }) => zone.id === to.zone)?.zone : undefined;
  const floorM = (other?.floorHeightM ?? 0) - room.floorHeightM;
  const edgeM = Math.min(fromEdgeM, room.heightM / 2);
  if (position === 'high') {
    const above = other !== undefined && floorM >= room.heightM - 1e-9;
    if (above) return { heightM: room.heightM, reason: 'in the ceiling' };
    return { heightM: room.heightM - edgeM, reason: '6 in below the ceiling' };
  }
  const below = other !== undefined && floorM + other.heightM <= 1e-9;
  return below
    ? { heightM: 0, reason: 'in the floor' }
    : { heightM: edgeM, reason: '6 in above the floor' };
}

/** The height at which it ends where none is given: its own, or the nearest within the other zone [m]. */
function nearestEnd(
  reading: Reading,
  { zones }: HouseSoFar,
  opening: {
    readonly heightM: number;
    readonly room: Zone;
    readonly to: Outlet;
    readonly origin: string;
  },
): number {
  const { heightM, room, to, origin } = opening;
  const other =
    to.kind === 'zone' ? zones.find(({ zone }) => zone.id === to.zone)?.zone : undefined;
  if (other === undefined) return heightM;
  const floorM = other.floorHeightM - room.floorHeightM;
  const nearestM = Math.min(Math.max(heightM, floorM), floorM + other.heightM);
  if (nearestM === heightM) return heightM;
  reading.assumptions.push({
    origin,
    what: 'height of its other end above the floor of its zone',
    value: { si: nearestM, dimension: 'length' },
    source: ourChoice(`a vertical duct to the nearest height of ${other.id}`),
  });
  return nearestM;
}
