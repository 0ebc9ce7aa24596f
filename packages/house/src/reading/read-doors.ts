import type { IssuePath } from '@evendraft/text';
import { doorFile, type DoorInFile } from '../file/door-file.js';
import type { Door, Zone } from '../house.js';
import { findZone } from './house-names.js';
import { checkLaw } from './read-law.js';
import type { HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { readJumpDuct, readOpenDoor, readShutDoor, withoutLeaf } from './read-door-leaf.js';
import { originOf, readValue, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/**
 * Reads the interior doors.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `doors`
 * @param house - zones and names
 * @returns doors in the order of the file; wrong ones are left out
 */
export function readDoors(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar,
): readonly Door[] {
  return items.flatMap(({ name, path, raw }) => {
    const inFile = readValue(reading, doorFile, { path, raw });
    if (inFile === undefined) return [];
    const origin = originOf(path);
    const [one, other] = inFile.between.map((zone, index) =>
      findZone(reading, house.names, { name: zone, path: [...path, 'between', index] }),
    );
    if (one === undefined || other === undefined) return [];
    if (one === other) {
      report(reading, [...path, 'between'], { code: 'door.same-zone', parameters: { zone: one } });
      return [];
    }
    const kind = inFile.kind ?? 'door';
    const opening = readOpenDoor(reading, { inFile, origin });
    const open = checkLaw(reading, path, opening);
    const positions = readPositions(reading, { inFile, kind, path });
    const baselinePosition = readBaseline(reading, { inFile, positions, path });
    // What cannot be shut passes the same in both positions.
    const leaf =
      kind === 'door'
        ? readShutDoor(reading, { inFile, path, opening })
        : { shut: withoutLeaf(reading, { inFile, kind, path, open }), parts: [] };
    if (leaf.shut === undefined || open === undefined) return [];
    const { shut } = leaf;
    const parts = [
      ...leaf.parts,
      ...readJumpDuct(reading, { inFile, path, rooms: roomsOf(house, [one, other]) }),
    ];
    const between: readonly [string, string] = [one, other];
    return [
      {
        id: name,
        origin,
        between,
        shut,
        open,
        ...(parts.length === 0 ? {} : { parts }),
        positions,
        baselinePosition,
      },
    ];
  });
}

/** The two rooms of a door, in its order; fewer where one is wrong. */
function roomsOf({ zones }: HouseSoFar, between: readonly string[]): readonly Zone[] {
  return between.flatMap((id) => zones.find(({ zone }) => zone.id === id)?.zone ?? []);
}

function readPositions(
  reading: Reading,
  door: {
    readonly inFile: DoorInFile;
    readonly kind: NonNullable<DoorInFile['kind']>;
    readonly path: IssuePath;
  },
): Door['positions'] {
  const { inFile, kind, path } = door;
  const { positions } = inFile;
  if (kind !== 'door') {
    const given = positions === undefined ? [] : [positions].flat();
    if (given.includes('shut') || inFile.baseline === 'shut') {
      const key = given.includes('shut') ? 'positions' : 'baseline';
      report(reading, [...path, key], { code: 'door.cannot-be-shut', parameters: { kind } });
    }
    return ['open'];
  }
  if (typeof positions === 'string') return [positions];
  if (positions !== undefined && positions.length > 0) return [...new Set(positions)];
  reading.assumptions.push({
    origin: originOf(path),
    what: 'positions studied',
    value: 'open and shut',
    source: ourChoice('either may be the worse one'),
  });
  return ['open', 'shut'];
}

function readBaseline(
  reading: Reading,
  door: {
    readonly inFile: DoorInFile;
    readonly positions: Door['positions'];
    readonly path: IssuePath;
  },
): Door['baselinePosition'] {
  const { inFile, positions, path } = door;
  if (inFile.baseline !== undefined) return inFile.baseline;
  if (inFile.kind === 'archway' || inFile.kind === 'stair opening') return 'open';
  const assumed = positions.includes('open') ? 'open' : 'shut';
  reading.assumptions.push({
    origin: originOf(path),
    what: 'position in the baseline',
    value: assumed,
    source: ourChoice('interior doors stand open unless the study has them shut'),
  });
  return assumed;
}
