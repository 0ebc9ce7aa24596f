import type { House } from '@evendraft/house';
import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside } from '../internal/burners.js';
import { partnersOnVent } from '../internal/partners-on-vent.js';
import type { Screen } from '../internal/screen.js';

type Flue = NonNullable<House['appliances'][number]['flue']>;

/** Largest flue area over draft-hood outlet [-]. */
const most = 7;

/**
 * The flue of an appliance alone on its chimney is no more than 7 times its draft-hood outlet.
 *
 * Source: NFPA 54 and International Fuel Gas Code, sizing of chimneys for one draft-hood appliance; from
 * memory.
 */
export const orphanedFlueArea: Screen = {
  rule: {
    id: 'orphaned-flue-area',
    title: 'Flue area over draft-hood outlet of an appliance left alone on its flue',
    region: 'United States',
    source: {
      document: 'NFPA 54; International Fuel Gas Code',
      section: 'sizing of a chimney for one appliance with a draft hood',
      status: 'memory',
    },
    notes: ['Too large a flue stays cold: it draws late, and water condenses in it.'],
  },
  run({ house, facts }) {
    const alone = burnersInside(house).filter(
      (one) =>
        one.vent === 'natural draft' &&
        ['gas', 'not stated'].includes(one.fuel) &&
        ['water heater', 'furnace', 'boiler', 'room heater'].includes(one.kind) &&
        partnersOnVent(one, house.appliances).length === 0,
    );
    if (alone.length === 0) {
      return [
        notMeantFor(this.rule, { why: 'No draft-hood appliance inside is alone on its flue.' }),
      ];
    }
    return alone.map(({ id, kind, flue }) => {
      const given = facts.appliances?.[id] ?? {};
      const {
        flueAreaM2 = widest(flue?.chimney),
        draftHoodOutletAreaM2 = flue?.connector[0]?.areaM2,
      } = given;
      const about = { subject: id, why: `It is a natural-draft ${kind} alone on its flue.` };
      if (flueAreaM2 === undefined || draftHoodOutletAreaM2 === undefined) {
        return lacks(this.rule, about, [
          ...(flueAreaM2 === undefined ? ['the inside area of its flue'] : []),
          ...(draftHoodOutletAreaM2 === undefined ? ['the area of its draft-hood outlet'] : []),
        ]);
      }
      const largest = most * draftHoodOutletAreaM2;
      return judgedBy(
        this.rule,
        {
          ...about,
          arithmetic: [
            line(
              'draft-hood outlet',
              given.draftHoodOutletAreaM2 === undefined
                ? 'as wide as the connector in the house file'
                : 'given',
              amount.area(draftHoodOutletAreaM2),
            ),
            line('largest flue', '7 × draft-hood outlet', amount.area(largest)),
            line(
              'flue',
              given.flueAreaM2 === undefined ? 'of the chimney in the house file' : 'given',
              amount.area(flueAreaM2),
            ),
            line(
              'ratio',
              'flue over draft-hood outlet',
              (flueAreaM2 / draftHoodOutletAreaM2).toFixed(1),
            ),
          ],
        },
        {
          held: { value: flueAreaM2, limit: largest, sense: 'at most' },
          satisfiedBy: ['A liner of the right size, or an appliance with a vent of its own.'],
        },
      );
    });
  },
};

/** The widest part of a chimney; nothing where none is described [m2]. */
function widest(chimney: Flue['chimney'] = []): number | undefined {
  return chimney.length === 0 ? undefined : Math.max(...chimney.map(({ areaM2 }) => areaM2));
}
