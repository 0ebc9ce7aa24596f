import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { exhaustSystems } from '../internal/exhaust-systems.js';
import { describedDuctLength } from '../internal/described-duct-length.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const longest = siOf('14 ft', 'length');
const perTurn = siOf('2 ft', 'length');

/**
 * Length of a dryer duct in California: 14 ft with two right angles, less 2 ft for each further one.
 *
 * Source: California Mechanical Code 2013, 504.3.1.2, read.
 */
export const dryerDuctLengthCalifornia: Screen = {
  rule: {
    id: 'dryer-duct-length-california',
    title: 'Length of a dryer duct with its right angles',
    region: 'California',
    source: {
      document: 'California Mechanical Code',
      edition: '2013',
      section: '504.3.1.2',
      status: 'found',
    },
  },
  run({ house, facts }) {
    const dryers = exhaustSystems(house).filter(({ kind }) => kind === 'dryer');
    if (dryers.length === 0) {
      return [notMeantFor(this.rule, { why: 'The house has no dryer that exhausts.' })];
    }
    return dryers.map((dryer) => {
      const { id } = dryer;
      const { ductFittings, ductLengthM = describedDuctLength(dryer) } = facts.devices?.[id] ?? {};
      const why = 'It is for every dryer that exhausts.';
      if (ductLengthM === undefined || ductFittings === undefined) {
        return lacks(this.rule, { subject: id, why }, [
          ...(ductLengthM === undefined ? ['the length of its duct'] : []),
          ...(ductFittings === undefined ? ['the fittings of its duct'] : []),
        ]);
      }
      const turns = ductFittings.filter((fitting) => fitting.endsWith('90')).length;
      const off = Math.max(turns - 2, 0) * perTurn;
      return judgedBy(
        this.rule,
        {
          subject: id,
          why,
          arithmetic: [
            line('longest', '14 ft, two right angles included', amount.length(longest)),
            line('right angles', 'given', String(turns)),
            line('taken off', '2 ft for each right angle beyond two', amount.length(off)),
            line('allowed', 'longest less what is taken off', amount.length(longest - off)),
            line('duct', 'given, straight lengths together', amount.length(ductLengthM)),
          ],
        },
        {
          held: { value: ductLengthM, limit: longest - off, sense: 'at most' },
          satisfiedBy: ['A shorter duct, fewer turns, or a dryer without exhaust.'],
        },
      );
    });
  },
};
