import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside, burnsSolidFuel, takesRoomAir } from '../internal/burners.js';
import type { Screen } from '../internal/screen.js';

/** Opening over flue collar [-]. */
const share = 0.5;

/**
 * Combustion-air opening of a solid-fuel appliance: half the area of its flue collar.
 *
 * Source: note A-9.33.1.1.(2) of the Canadian building codes and CSA B365, read.
 */
export const hearthOpeningCanada: Screen = {
  rule: {
    id: 'hearth-opening-canada',
    title: 'Combustion-air opening of a solid-fuel appliance',
    region: 'Canada',
    source: {
      document: 'National Building Code of Canada; Ontario Building Code; CSA B365',
      section: 'note A-9.33.1.1.(2)',
      status: 'found',
    },
    notes: ['A guide of the code’s note, not a requirement.'],
  },
  run({ house, facts }) {
    const hearths = burnersInside(house).filter((one) => burnsSolidFuel(one) && takesRoomAir(one));
    if (hearths.length === 0) {
      return [
        notMeantFor(this.rule, {
          why: 'No solid-fuel appliance inside takes its air from the room.',
        }),
      ];
    }
    return hearths.map(({ id, kind }) => {
      const { flueCollarAreaM2, airOpeningAreaM2 } = facts.appliances?.[id] ?? {};
      const about = { subject: id, why: `It is a ${kind} with solid fuel.` };
      if (flueCollarAreaM2 === undefined || airOpeningAreaM2 === undefined) {
        return lacks(this.rule, about, [
          ...(flueCollarAreaM2 === undefined ? ['the area of its flue collar'] : []),
          ...(airOpeningAreaM2 === undefined ? ['the area of its combustion-air opening'] : []),
        ]);
      }
      const least = share * flueCollarAreaM2;
      return judgedBy(
        this.rule,
        {
          ...about,
          arithmetic: [
            line('flue collar', 'given', amount.area(flueCollarAreaM2)),
            line('least', 'half the flue collar', amount.area(least)),
            line('opening', 'given', amount.area(airOpeningAreaM2)),
          ],
        },
        {
          held: { value: airOpeningAreaM2, limit: least, sense: 'at least' },
          satisfiedBy: [
            'An opening of that area, or an appliance with air of its own from outdoors.',
          ],
        },
      );
    });
  },
};
