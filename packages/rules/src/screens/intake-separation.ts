import type { House } from '@evendraft/house';
import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const apart = siOf('10 ft', 'length');
const below = siOf('3 ft', 'length');

/**
 * An intake stands 10 ft from sources of bad air, or 3 ft below one that is nearer.
 *
 * Source: International Residential Code R303.5.1, as the California Residential Code 2013 has it, read.
 */
export const intakeSeparation: Screen = {
  rule: {
    id: 'intake-separation',
    title: 'Distance of an air intake from vents and other sources',
    region: 'United States',
    source: {
      document: 'International Residential Code; California Residential Code',
      edition: '2013 (California)',
      section: 'R303.5.1',
      status: 'found',
    },
    notes: [
      'Exhaust of kitchens and bathrooms does not count as a source here; other sections ask for 3 ft from openings and the property line, and 10 ft from mechanical intakes unless the outlet is 3 ft above (M1504.3, from memory). Screens have a mesh of 1/4 to 1/2 in. (R303.6).',
    ],
  },
  run({ house, facts }) {
    const intakes = intakesOf(house);
    if (intakes.length === 0) {
      return [notMeantFor(this.rule, { why: 'The house has no intake for outdoor air.' })];
    }
    return intakes.flatMap((subject) => {
      const sources = facts.intakes?.[subject];
      const why = 'It takes in outdoor air.';
      if (sources === undefined) {
        return [
          lacks(this.rule, { subject, why }, [
            'how far vents, chimneys, plumbing vents and streets are from it, and how much higher',
          ]),
        ];
      }
      if (sources.length === 0) {
        return [notMeantFor(this.rule, { subject, why: 'No source is said to be near it.' })];
      }
      return sources.map(({ name, distanceM, aboveIntakeM }) => {
        const byHeight = distanceM < apart && aboveIntakeM > 0;
        return judgedBy(
          this.rule,
          {
            subject,
            why,
            arithmetic: [
              line(name, 'distance, given', amount.length(distanceM)),
              line(name, 'height above the intake, given', amount.length(aboveIntakeM)),
              line('least distance', '10 ft', amount.length(apart)),
              line('or least height', 'source 3 ft above the intake', amount.length(below)),
            ],
          },
          {
            held: byHeight
              ? { value: aboveIntakeM, limit: below, sense: 'at least' }
              : { value: distanceM, limit: apart, sense: 'at least' },
            satisfiedBy: [`An intake 10 ft from the ${name}, or 3 ft below it.`],
          },
        );
      });
    });
  },
};

function intakesOf(house: House): readonly string[] {
  return [
    ...house.devices.filter(({ direction }) => direction === 'supply').map(({ id }) => id),
    ...house.makeUpOpenings.map(({ id }) => id),
    ...house.ventilators.map(({ id }) => id),
  ];
}
