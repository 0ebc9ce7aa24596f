import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { germanRooms, outputNote } from '../internal/german-rooms.js';
import { outdoorOpenings } from '../internal/outdoor-openings.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import { freeAreaOf } from './louvre-free-area.js';

const largest = siOf('50 kW', 'power');
const oneOpening = siOf('150 cm2', 'area');
const eachOfTwo = siOf('75 cm2', 'area');

/**
 * An opening to outdoors of 150 cm², or two of 75 cm², up to 50 kW.
 *
 * Source: MFeuVO, section 3; from memory.
 */
export const germanOpening: Screen = {
  rule: {
    id: 'german-opening',
    title: 'Opening to outdoors for combustion air, up to 50 kW',
    region: 'Germany',
    source: { document: 'MFeuVO', section: '3', status: 'memory' },
    notes: [outputNote, 'One of several ways; the volume of rooms is another.'],
  },
  run({ house, facts }) {
    return germanRooms(this.rule, house, ({ zone, inputW }) => {
      const about = { subject: zone, why: 'An appliance that depends on room air stands in it.' };
      if (inputW > largest) {
        return notMeantFor(this.rule, { subject: zone, why: 'Its appliances exceed 50 kW.' });
      }
      const openings = outdoorOpenings({ house, facts }, zone);
      if (openings === undefined) {
        return lacks(this.rule, about, ['its openings to outdoors, if it has any']);
      }
      const areas = openings.map(freeAreaOf).sort((one, other) => other - one);
      const [first = 0, second = 0] = areas;
      const two = first < oneOpening && second > 0;
      return judgedBy(
        this.rule,
        {
          ...about,
          arithmetic: [
            line('one opening', '150 cm²', amount.area(oneOpening)),
            line('or each of two', '75 cm²', amount.area(eachOfTwo)),
            ...areas.map((area) => line('opening', 'free area', amount.area(area))),
          ],
        },
        {
          held: two
            ? { value: second, limit: eachOfTwo, sense: 'at least' }
            : { value: first, limit: oneOpening, sense: 'at least' },
          satisfiedBy: ['An opening to outdoors of that free area, or two of half of it.'],
        },
      );
    });
  },
};
