import type { House } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HouseLink } from './house-link.js';
import { linkId } from './link-id.js';

/**
 * Links of the balanced ventilators: a constant supply and a constant exhaust.
 *
 * @param house - the house
 * @returns links in the order of the ventilators, supply before exhaust
 */
export function ventilatorLinks(house: House): readonly HouseLink[] {
  return house.ventilators.flatMap((v) => {
    const ways = [
      { way: 'supply', from: '@outdoors', to: v.supplyZone, zone: v.supplyZone },
      { way: 'exhaust', from: v.exhaustZone, to: '@outdoors', zone: v.exhaustZone },
    ] as const;
    return ways.map(({ way, from, to, zone }): HouseLink => {
      const heightM = floorOf(house, zone);
      const volumeFlowM3PerS = way === 'supply' ? v.supplyFlowM3PerS : v.exhaustFlowM3PerS;
      return {
        description: {
          id: linkId('ventilator', v.id, way),
          origin: v.origin,
          from,
          to,
          fromHeightM: heightM,
          toHeightM: heightM,
          law: { kind: 'fixedFlow', volumeFlowM3PerS },
        },
        role: { kind: 'ventilator', id: v.id },
      };
    });
  });
}
