import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const largest = siOf('0.01 in. w.c.', 'pressure');

/**
 * A gravity or barometric damper of passive make-up air passes its design flow at 0.01 in. w.c. or less.
 *
 * Source: International Residential Code 2018 and later, M1503.6.2; from memory. The code prints 3 Pa
 * beside 0.01 in. w.c., which is 2.49 Pa.
 */
export const passiveDamperRating: Screen = {
  rule: {
    id: 'passive-damper-rating',
    title: 'Rating of a gravity or barometric damper in passive make-up air',
    region: 'United States',
    source: {
      document: 'International Residential Code',
      edition: '2018 and later',
      section: 'M1503.6.2',
      status: 'memory',
    },
    notes: [
      'From memory: compare it with the code before relying on it. Dampers are reached without removing permanent construction.',
    ],
  },
  run({ house, facts }) {
    if (house.makeUpOpenings.length === 0) {
      return [notMeantFor(this.rule, { why: 'The house has no make-up opening.' })];
    }
    return house.makeUpOpenings.map(({ id }) => {
      const { damper, designPressurePa } = facts.makeUp?.[id] ?? {};
      if (damper === 'electric' || damper === 'none') {
        return notMeantFor(this.rule, {
          subject: id,
          why: damper === 'none' ? 'It has no damper.' : 'Its damper is electric.',
        });
      }
      if (damper === undefined || designPressurePa === undefined) {
        return lacks(
          this.rule,
          {
            subject: id,
            applies: damper === undefined ? 'unknown' : 'yes',
            why: damper === undefined ? 'It depends on its damper.' : `Its damper is ${damper}.`,
          },
          [
            ...(damper === undefined ? ['what kind of damper it has'] : []),
            'at what pressure its damper passes the design flow',
          ],
        );
      }
      return judgedBy(
        this.rule,
        {
          subject: id,
          why: `Its damper is ${damper}.`,
          arithmetic: [
            line('design pressure', 'given', amount.pressure(designPressurePa)),
            line('largest', '0.01 in. w.c.', amount.pressure(largest)),
          ],
        },
        {
          held: { value: designPressurePa, limit: largest, sense: 'at most' },
          satisfiedBy: ['An electric damper that opens with the exhaust, or one of that rating.'],
        },
      );
    });
  },
};
