import type { DoorPart, House } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HouseLink, LinkRole } from './house-link.js';
import { linkId } from './link-id.js';

/**
 * Links of the interior doors, archways and stair openings: one a position, and one for each part that passes
 * air besides. Their floor is that of the upper of both zones.
 *
 * @param house - the house
 * @returns links in the order of the doors, open before shut before parts
 */
export function doorLinks(house: House): readonly HouseLink[] {
  return house.doors.flatMap((door) => {
    const { id, origin, between, parts = [] } = door;
    const [from, to] = between;
    const floorM = Math.max(floorOf(house, from), floorOf(house, to));
    const link = (
      name: string,
      of: Pick<DoorPart, 'law' | 'heightM' | 'endHeightM'>,
      position: Extract<LinkRole, { kind: 'door' }>['position'],
    ): HouseLink => {
      const { heightM, endHeightM = heightM, law } = of;
      const fromHeightM = floorM + heightM;
      const toHeightM = floorM + endHeightM;
      // A duct between ceilings of two heights fills with the air of whichever room air leaves.
      const [upward, downward] = endHeightM > heightM ? [from, to] : [to, from];
      return {
        description: {
          id: linkId('door', id, name),
          origin,
          from,
          to,
          fromHeightM,
          toHeightM,
          law,
        },
        role: { kind: 'door', id, position },
        ...(endHeightM === heightM ? {} : { columnOf: from, twoState: { upward, downward } }),
      };
    };
    return [
      link('open', { law: door.open, heightM: 0 }, 'open'),
      link('shut', { law: door.shut, heightM: 0 }, 'shut'),
      ...parts.map((part) => link(part.name, part, part.when)),
    ];
  });
}
