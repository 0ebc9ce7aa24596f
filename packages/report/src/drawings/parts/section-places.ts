import { insideZoneKinds } from '@evendraft/house';
import type { SectionZone } from '../house-section-data.js';
import type { Box } from './marks.js';
import { straightScale, type Scale } from './scale.js';

/** Where the zones of a house lie in a section. */
export interface SectionPlaces {
  readonly zones: readonly { readonly zone: string; readonly box: Box }[];
  /** Left and right wall of the house without what stands beside it [px]. */
  readonly walls: { readonly left: number; readonly right: number };
  /** What the zones take together [px]. */
  readonly room: Box;
  /** Room for arrows and names on each side of the house [px]. */
  readonly sideRoom: number;
  /** Place of a height above the datum [px]. */
  readonly yOf: Scale;
  /** Place of the ground, the datum [px]. */
  readonly groundAt: number;
}

/** Zones whose floors differ by less share a floor [m]. */
const sameFloorM = 0.6;
const sideRoom = 54;

/**
 * Lays the zones out: one row a floor, zones of a floor side by side, each as high as it is. Zones
 * beside the house, such as a garage, stand on its right.
 *
 * @param zones - the zones with their heights
 * @param panel - the room there is, with that for arrows on both sides [px]
 * @returns a box for each zone
 */
export function sectionPlaces(zones: readonly SectionZone[], panel: Box): SectionPlaces {
  const box = { ...panel, x: panel.x + sideRoom, width: panel.width - 2 * sideRoom };
  const bottom = Math.min(0, ...zones.map(({ floorHeightM }) => floorHeightM));
  const top = Math.max(2, ...zones.map(({ floorHeightM, heightM }) => floorHeightM + heightM));
  const yOf = straightScale([bottom, top], [box.y + box.height, box.y]);
  const outside = zones.filter(({ kind }) => kind === 'garage' || kind === 'shaft');
  const body = zones.filter((zone) => !outside.includes(zone));
  // What stands beside the house takes the room for arrows on the right, and a gap for them before it.
  const bodyWidth = outside.length === 0 ? box.width : box.width - 62;
  const rows = [
    { members: outside, x: box.x + bodyWidth + sideRoom, width: 62 },
    ...floorsOf(body).map((members) => ({ members, x: box.x, width: bodyWidth })),
  ];
  return {
    walls: { left: box.x, right: box.x + bodyWidth },
    room: box,
    sideRoom,
    yOf,
    groundAt: yOf(0),
    zones: rows.flatMap(({ members, x, width }) =>
      members.map(({ zone, floorHeightM, heightM }, index) => ({
        zone,
        box: {
          x: x + (index * width) / members.length,
          y: yOf(floorHeightM + heightM),
          width: width / members.length,
          height: yOf(floorHeightM) - yOf(floorHeightM + heightM),
        },
      })),
    ),
  };
}

/** Floors from the lowest up; on each the zones that people live in stand first. */
function floorsOf(zones: readonly SectionZone[]): readonly (readonly SectionZone[])[] {
  const floors: SectionZone[][] = [];
  const rising = [...zones].sort((a, b) => a.floorHeightM - b.floorHeightM);
  for (const zone of rising) {
    const floor = floors.at(-1);
    const base = floor?.[0]?.floorHeightM;
    if (floor !== undefined && base !== undefined && zone.floorHeightM - base < sameFloorM) {
      floor.push(zone);
    } else {
      floors.push([zone]);
    }
  }
  const outer = ({ kind }: SectionZone): number => (insideZoneKinds.includes(kind) ? 0 : 1);
  return floors.map((floor) => floor.sort((a, b) => outer(a) - outer(b)));
}
