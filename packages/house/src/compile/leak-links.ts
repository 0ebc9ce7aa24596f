import type { House, LeakShare } from '../house.js';
import type { HouseLink } from './house-link.js';
import { faces, openingNode } from './house-nodes.js';
import { linkId } from './link-id.js';

/** Wall leakage is spread evenly over the height, as this many strips with the leak at mid-height. */
const wallStrips = 3;

/**
 * Links of the tested leakage, spread over the surfaces of the zones.
 *
 * @param house - the house
 * @param leakCoefficientM3PerSPaN - coefficient of the whole remaining leakage in the first case [m3/(s Pa^n)]
 * @returns links in the order of the shares
 */
export function leakLinks(house: House, leakCoefficientM3PerSPaN: number): readonly HouseLink[] {
  return house.leakShares.flatMap((share, index) =>
    share.share > 0 ? shareLinks(house, { share, index, leakCoefficientM3PerSPaN }) : [],
  );
}

function shareLinks(
  house: House,
  of: {
    readonly share: LeakShare;
    readonly index: number;
    readonly leakCoefficientM3PerSPaN: number;
  },
): readonly HouseLink[] {
  const { share, index, leakCoefficientM3PerSPaN } = of;
  const { zone, surface, to } = share;
  const { floorHeightM = 0, heightM = 0 } = house.zones.find(({ id }) => id === zone) ?? {};
  const onWalls = surface === 'walls';
  const nodes =
    onWalls && to.kind === 'outdoors'
      ? faces.map((face) => `@${face}`)
      : [surface === 'ceiling' && to.kind === 'outdoors' ? '@roof' : openingNode(to)];
  const heights = onWalls
    ? Array.from(
        { length: wallStrips },
        (_, i) => floorHeightM + ((i + 0.5) / wallStrips) * heightM,
      )
    : [surface === 'ceiling' ? floorHeightM + heightM : floorHeightM];
  const coefficientM3PerSPaN =
    (leakCoefficientM3PerSPaN * share.share) / (nodes.length * heights.length);
  const { exponent } = house.airtightness;
  return nodes.flatMap((node) =>
    heights.map((height, strip) => ({
      description: {
        // Two shares may be of the same surface to the same place, so their number is part of the id.
        id: linkId('leak', index + 1, zone, surface, node, strip + 1),
        origin: share.origin,
        from: zone,
        to: node,
        fromHeightM: height,
        toHeightM: height,
        law: { kind: 'powerLaw', coefficientM3PerSPaN, exponent },
      },
      role: { kind: 'leak', share: index },
    })),
  );
}
