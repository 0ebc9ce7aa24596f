import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { exhaustSystems } from '../internal/exhaust-systems.js';
import { describedDuctLength } from '../internal/described-duct-length.js';
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
      const off = ductFittings.reduce((sum, fitting) => sum + takenOff[fitting], 0);
      return judgedBy(
        this.rule,
        {
          subject: id,
          why,
          arithmetic: [
            line('longest', '35 ft', amount.length(longest)),
            ...ductFittings.map((fitting) =>
              line(fitting, 'taken off', amount.length(takenOff[fitting])),
            ),
            line('allowed', 'longest less all fittings', amount.length(longest - off)),
            line('duct', 'given, straight lengths together', amount.length(ductLengthM)),
          ],
        },
        {
          held: { value: ductLengthM, limit: longest - off, sense: 'at most' },
          satisfiedBy: ['A shorter duct, fewer or smoother turns, or a dryer without exhaust.'],
        },
      );
    });
  },
};
