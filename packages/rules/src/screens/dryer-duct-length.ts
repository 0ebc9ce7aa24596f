import { amount, line } from '../internal/arithmetic-line.js';
import { dryerDucts } from '../internal/dryer-ducts.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import type { DryerFitting } from '../screen-facts.js';

const longest = siOf('35 ft', 'length');

/** Length that each fitting takes off [m]. */
const takenOff: Readonly<Record<DryerFitting, number>> = {
  '4 in. mitered 45': siOf('2 ft 6 in', 'length'),
  '4 in. mitered 90': siOf('5 ft', 'length'),
  '6 in. smooth 45': siOf('1 ft', 'length'),
  '6 in. smooth 90': siOf('1 ft 9 in', 'length'),
  '8 in. smooth 45': siOf('1 ft', 'length'),
  '8 in. smooth 90': siOf('1 ft 7 in', 'length'),
  '10 in. smooth 45': siOf('9 in', 'length'),
  '10 in. smooth 90': siOf('1 ft 6 in', 'length'),
};

/**
 * Length of a dryer duct: 35 ft less what each fitting takes off.
 *
 * Source: International Residential Code, M1502.4.6 (M1502.4.5 in 2015) and Table M1502.4.5.1,
 * restated; two values of the table on a page of a maker of fittings.
 */
export const dryerDuctLength: Screen = {
  rule: {
    id: 'dryer-duct-length',
    title: 'Length of a dryer duct less its fittings',
    region: 'United States',
    source: {
      document: 'International Residential Code',
      section: 'M1502.4.6 (M1502.4.5 in 2015), Table M1502.4.5.1',
      status: 'found second-hand',
    },
    notes: ['The maker’s own length, where the dryer’s book states one, stands in its place.'],
  },
  run(context) {
    return dryerDucts(this.rule, context, {
      allowed(fittings) {
        const lengthM = longest - fittings.reduce((sum, fitting) => sum + takenOff[fitting], 0);
        return {
          lengthM,
          arithmetic: [
            line('longest', '35 ft', amount.length(longest)),
            ...fittings.map((fitting) =>
              line(fitting, 'taken off', amount.length(takenOff[fitting])),
            ),
            line('allowed', 'longest less all fittings', amount.length(lengthM)),
          ],
        };
      },
      satisfiedBy: 'A shorter duct, fewer or smoother turns, or a dryer without exhaust.',
    });
  },
};
