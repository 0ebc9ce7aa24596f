import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { exhaustSystems } from '../internal/exhaust-systems.js';
import { openingsToRooms } from '../internal/free-openings.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const least = siOf('100 in2', 'area');

/**
 * A closet with a dryer in it has an opening of 100 in² or more.
 *
 * Source: International Fuel Gas Code and International Residential Code; California Mechanical Code
 * 2013, 504.3.1, read.
 */
export const dryerClosetOpening: Screen = {
  rule: {
    id: 'dryer-closet-opening',
    title: 'Opening of a closet with a dryer in it',
    region: 'United States',
    source: {
      document: 'International Fuel Gas Code; California Mechanical Code',
      edition: '2013 (California)',
      section: '614; 504.3.1',
      status: 'found',
    },
    notes: [
      'Commercial dryers have a rule of their own: free area of 1 in² for each 1,000 Btu/h (NFPA 54, 10.4.3.2).',
    ],
  },
  run({ house, facts }) {
    const dryers = exhaustSystems(house).filter(({ kind }) => kind === 'dryer');
    if (dryers.length === 0) {
      return [notMeantFor(this.rule, { why: 'The house has no dryer that exhausts.' })];
    }
    return dryers.map(({ id, zone }) => {
      const closet = house.zones.some((one) => one.id === zone && one.kind === 'closet');
      if (!closet) {
        return notMeantFor(this.rule, {
          subject: id,
          why: `It stands in the ${zone}, which is not a closet.`,
        });
      }
      const why = `It stands in the ${zone}, a closet.`;
      const described = openingsToRooms(house, zone);
      const stated = facts.devices?.[id]?.closetOpeningAreaM2;
      if (stated === undefined && described.length === 0) {
        return lacks(this.rule, { subject: id, why }, [
          'the size of the opening in the door or wall of its closet',
        ]);
      }
      const area = stated ?? described.reduce((sum, { areaM2 }) => sum + areaM2, 0);
      return judgedBy(
        this.rule,
        {
          subject: id,
          why,
          arithmetic: [
            line(
              'opening',
              stated === undefined ? 'openings of the house' : 'given',
              amount.area(area),
            ),
            line('least', '100 in²', amount.area(least)),
          ],
        },
        {
          held: { value: area, limit: least, sense: 'at least' },
          satisfiedBy: ['A louvre, grille or undercut of at least that free area.'],
        },
      );
    });
  },
};
