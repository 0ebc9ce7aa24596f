import type { House } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HouseLink } from './house-link.js';
import { linkId } from './link-id.js';

/**
 * Links of the interior doors, one a position.
 *
 * @param house - the house
 * @returns links in the order of the doors, open before shut
 */
export function doorLinks(house: House): readonly HouseLink[] {
  return house.doors.flatMap((door) => {
    const [from, to] = door.between;
    const heightM = Math.max(floorOf(house, from), floorOf(house, to));
    return (['open', 'shut'] as const).map((position): HouseLink => ({
      description: {
        id: linkId('door', door.id, position),
        origin: door.origin,
        from,
        to,
        fromHeightM: heightM,
        toHeightM: heightM,
        law: door[position],
      },
      role: { kind: 'door', id: door.id, position },
    }));
  });
}
