import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside, takesRoomAir } from '../internal/burners.js';
import { outdoorOpenings } from '../internal/outdoor-openings.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import { freeAreaOf } from './louvre-free-area.js';

const freeInput = siOf('7 kW', 'power');
const areaPerWatt = siOf('5 cm2', 'area') / siOf('1 kW', 'power');

/**
 * Permanent vent for open-flued gas: 5 cm² for each kW above 7 kW.
 *
 * Source: BS 5440-2 and Approved Document J; from memory.
 */
export const britishVentForOpenFlue: Screen = {
  rule: {
    id: 'british-vent-for-open-flue',
    title: 'Permanent vent of a room with open-flued gas appliances',
    region: 'United Kingdom',
    source: { document: 'BS 5440-2; Approved Document J', status: 'memory' },
    notes: ['A rule for houses of usual leakage; a tight house is asked for more.'],
  },
  run({ house, facts }) {
    const burners = burnersInside(house).filter(
      (one) => takesRoomAir(one) && one.fuel === 'gas' && one.vent !== 'unvented',
    );
    const rooms = [...new Set(burners.map(({ zone }) => zone))];
    if (rooms.length === 0) {
      return [notMeantFor(this.rule, { why: 'No open-flued gas appliance stands inside.' })];
    }
    return rooms.map((zone) => {
      const here = burners.filter((one) => one.zone === zone);
      const about = { subject: zone, why: 'An open-flued gas appliance stands in it.' };
      const unknown = here.filter(({ inputW }) => inputW === undefined);
      if (unknown.length > 0) {
        return lacks(
          this.rule,
          about,
          unknown.map(({ id }) => `the input of the ${id}`),
        );
      }
      const input = here.reduce((sum, { inputW = 0 }) => sum + inputW, 0);
      const least = Math.max(0, input - freeInput) * areaPerWatt;
      const arithmetic = [
        line('input', 'all in the room', amount.power(input)),
        line('free', '7 kW by the leaks of the room', amount.power(freeInput)),
        line('vent', '5 cm² for each kW above', amount.area(least)),
      ];
      if (least === 0)
        return notMeantFor(this.rule, { ...about, why: 'Its input is 7 kW or less.', arithmetic });
      const openings = outdoorOpenings({ house, facts }, zone);
      if (openings === undefined) {
        return lacks(this.rule, { ...about, arithmetic }, [
          'its permanent vents to outdoors, if it has any',
        ]);
      }
      const free = openings.reduce((sum, one) => sum + freeAreaOf(one), 0);
      return judgedBy(
        this.rule,
        {
          ...about,
          arithmetic: [...arithmetic, line('built', 'free area of all vents', amount.area(free))],
        },
        {
          held: { value: free, limit: least, sense: 'at least' },
          satisfiedBy: ['A permanent vent of that free area, which cannot be shut.'],
        },
      );
    });
  },
};
