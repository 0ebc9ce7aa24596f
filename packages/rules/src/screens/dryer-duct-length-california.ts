import { amount, line } from '../internal/arithmetic-line.js';
import { dryerDucts } from '../internal/dryer-ducts.js';
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
  run(context) {
    return dryerDucts(this.rule, context, {
      allowed(fittings) {
        const turns = fittings.filter((fitting) => fitting.endsWith('90')).length;
        const off = Math.max(turns - 2, 0) * perTurn;
        return {
          lengthM: longest - off,
          arithmetic: [
            line('longest', '14 ft, two right angles included', amount.length(longest)),
            line('right angles', 'given', String(turns)),
            line('taken off', '2 ft for each right angle beyond two', amount.length(off)),
            line('allowed', 'longest less what is taken off', amount.length(longest - off)),
          ],
        };
      },
      satisfiedBy: 'A shorter duct, fewer turns, or a dryer without exhaust.',
    });
  },
};
