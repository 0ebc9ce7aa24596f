import { judgedBy, lacks } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { combustionRooms, perThousandBtuPerHour } from '../internal/combustion-rooms.js';
import { openingsToRooms } from '../internal/free-openings.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import { freeAreaOf } from './louvre-free-area.js';

const perOpening = siOf('1 in2', 'area') / perThousandBtuPerHour;
const leastOpening = siOf('100 in2', 'area');
const otherStorey = siOf('2 in2', 'area') / perThousandBtuPerHour;

/**
 * Openings between a room with gas appliances and other rooms.
 *
 * Same storey: two, each 1 in² for each 1,000 Btu/h and 100 in² or more; another storey: 2 in² for each
 * 1,000 Btu/h in all. Source: NFPA 54-2012, 9.3.2.3, read.
 */
export const combustionAirIndoorOpenings: Screen = {
  rule: {
    id: 'combustion-air-indoor-openings',
    title: 'Openings from a room with gas appliances to other rooms',
    region: 'United States',
    source: { document: 'NFPA 54', edition: '2012', section: '9.3.2.3', status: 'found' },
    notes: [
      'One opening begins within 12 in. of the top of the room, the other within 12 in. of its bottom, and no side is under 3 in.; the place and shape of openings are not judged.',
      'It is needed only where the air of other rooms is counted on.',
    ],
  },
  run({ house, facts }) {
    return combustionRooms(this.rule, house, (room) => {
      const stated = facts.zones?.[room.zone]?.combustionOpenings?.filter(
        ({ to }) => to !== 'outdoors',
      );
      const described = openingsToRooms(house, room.zone);
      const openings =
        stated?.map((one) => ({
          name: `opening to a ${one.to}`,
          sameStorey: one.to === 'room on the same storey',
          freeM2: freeAreaOf(one),
        })) ??
        described.map(({ opening, areaM2 }) => ({
          name: opening.id,
          sameStorey: true,
          freeM2: areaM2,
        }));
      const each = Math.max(perOpening * room.inputW, leastOpening);
      const total = otherStorey * room.inputW;
      const arithmetic = [
        ...room.arithmetic,
        line('each of two', '1 in² for each 1,000 Btu/h, 100 in² or more', amount.area(each)),
        ...openings.map(({ name, freeM2 }) => line(name, 'free area', amount.area(freeM2))),
      ];
      if (stated === undefined && described.length === 0) {
        return lacks(this.rule, { subject: room.zone, why: room.why, arithmetic }, [
          'the openings between this room and others, with their free areas',
        ]);
      }
      const sameStorey = openings
        .filter((one) => one.sameStorey)
        .map(({ freeM2 }) => freeM2)
        .sort((one, other) => other - one);
      const elsewhere = openings
        .filter((one) => !one.sameStorey)
        .reduce((sum, { freeM2 }) => sum + freeM2, 0);
      const byOther = sameStorey.length === 0 && elsewhere > 0;
      return judgedBy(
        this.rule,
        {
          subject: room.zone,
          why: room.why,
          arithmetic: byOther
            ? [
                ...arithmetic,
                line('to another storey', '2 in² for each 1,000 Btu/h in all', amount.area(total)),
              ]
            : [
                ...arithmetic,
                line('smaller of two', 'second largest opening', amount.area(sameStorey[1] ?? 0)),
              ],
        },
        {
          held: byOther
            ? { value: elsewhere, limit: total, sense: 'at least' }
            : { value: sameStorey[1] ?? 0, limit: each, sense: 'at least' },
          satisfiedBy: ['Two permanent openings of that free area, one high and one low.'],
        },
      );
    });
  },
};
