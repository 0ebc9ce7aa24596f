import type { IssuePath } from '@evendraft/text';
import { assumedDischargeCoefficient } from '../file/opening-law.js';
import { doorFile, type DoorInFile } from '../file/door-file.js';
import type { Door } from '../house.js';
import { findZone } from './house-names.js';
import { checkLaw } from './read-law.js';
import type { HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { givenOr, originOf, readValue, report, type Reading } from './reading.js';
import { dischargeSource, ourChoice } from './sources.js';

/** Free area of an open door, 0.9 by 2.0 m [m2]. */
const openDoorAreaM2 = 1.8;

/** Free area under a shut door where none is given: 12 in2 [m2]. */
const assumedUndercutM2 = 12 * 0.0254 ** 2;

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
    const undercut = givenOr(reading, undercutArea(inFile), {
      origin,
      what: 'free area under the shut door',
      value: { si: assumedUndercutM2, dimension: 'area' },
      source: ourChoice('a gap of 3/8 in under a door of 32 in'),
    });
    reading.assumptions.push(
      {
        origin,
        what: 'free area of the open door',
        value: { si: openDoorAreaM2, dimension: 'area' },
        source: ourChoice('0.9 by 2.0 m'),
      },
      {
        origin,
        what: 'discharge coefficient, shut and open',
        value: { si: assumedDischargeCoefficient, dimension: 'ratio' },
        source: dischargeSource,
      },
    );
    const shut = checkLaw(reading, path, orifice(undercut + (inFile.grille ?? 0)));
    const open = checkLaw(reading, path, orifice(openDoorAreaM2));
    const positions = readPositions(reading, inFile, origin);
    const baselinePosition = readBaseline(reading, { inFile, positions, path });
    if (shut === undefined || open === undefined) return [];
    const between: readonly [string, string] = [one, other];
    return [{ id: name, origin, between, shut, open, positions, baselinePosition }];
  });
}

function undercutArea({ undercut }: DoorInFile): number | undefined {
  return typeof undercut === 'object' ? undercut.gap * undercut.width : undercut;
}

function orifice(areaM2: number) {
  const dischargeCoefficient = assumedDischargeCoefficient;
  return { kind: 'orifice', areaM2, dischargeCoefficient } as const;
}

function readPositions(
  reading: Reading,
  { positions }: DoorInFile,
  origin: string,
): Door['positions'] {
  if (typeof positions === 'string') return [positions];
  if (positions !== undefined && positions.length > 0) return [...new Set(positions)];
  reading.assumptions.push({
    origin,
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
  const assumed = positions.includes('open') ? 'open' : 'shut';
  reading.assumptions.push({
    origin: originOf(path),
    what: 'position in the baseline',
    value: assumed,
    source: ourChoice('interior doors stand open unless the study has them shut'),
  });
  return assumed;
}
