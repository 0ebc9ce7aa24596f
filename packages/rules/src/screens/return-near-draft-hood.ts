import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside } from '../internal/burners.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const apart = siOf('10 ft', 'length');

/**
 * No return inlet within 10 ft of a draft hood, a burner or a hearth in the same space.
 *
 * Source: International Residential Code M1602.2 and International Mechanical Code 918.6; from memory.
 */
export const returnNearDraftHood: Screen = {
  rule: {
    id: 'return-near-draft-hood',
    title: 'Distance of a return inlet from a draft hood, burner or hearth',
    region: 'United States',
    source: {
      document: 'International Residential Code; International Mechanical Code',
      section: 'M1602.2; 918.6',
      status: 'memory',
    },
  },
  run({ house, facts }) {
    const drawing = burnersInside(house).filter(
      ({ vent }) => vent === 'natural draft' || vent === 'open hearth' || vent === 'closed stove',
    );
    if (drawing.length === 0) {
      return [
        notMeantFor(this.rule, { why: 'No appliance inside has a draft hood or an open burner.' }),
      ];
    }
    return drawing.map(({ id, vent }) => {
      const distance = facts.appliances?.[id]?.nearestReturnM;
      const about = { subject: id, why: `It is ${vent}.` };
      return distance === undefined
        ? lacks(this.rule, about, ['how far the nearest return inlet of its space is from it'])
        : judgedBy(
            this.rule,
            {
              ...about,
              arithmetic: [
                line('nearest return', 'given', amount.length(distance)),
                line('least', '10 ft', amount.length(apart)),
              ],
            },
            {
              held: { value: distance, limit: apart, sense: 'at least' },
              satisfiedBy: ['A return inlet farther away, or closed and sealed where it is.'],
            },
          );
    });
  },
};
