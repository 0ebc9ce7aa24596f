import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { joinedZones } from '../internal/free-openings.js';
import { germanRooms, outputNote } from '../internal/german-rooms.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const largest = siOf('35 kW', 'power');
const volumePerWatt = siOf('4 m3', 'volume') / siOf('1 kW', 'power');

/**
 * Up to 35 kW: a room with an outside door or a window that opens, and 4 m³ for each kW.
 *
 * Source: FeuVO, section 3, restated.
 */
export const germanRoomVolume: Screen = {
  rule: {
    id: 'german-room-volume',
    title: 'Volume of a room with appliances that depend on its air, up to 35 kW',
    region: 'Germany',
    source: { document: 'FeuVO', section: '3', status: 'found second-hand' },
    notes: [outputNote, 'The statute itself was not read.'],
  },
  run({ house, facts }) {
    return germanRooms(this.rule, house, ({ zone, inputW }) => {
      const about = { subject: zone, why: 'An appliance that depends on room air stands in it.' };
      if (inputW > largest) {
        return notMeantFor(this.rule, { subject: zone, why: 'Its appliances exceed 35 kW.' });
      }
      const joined = joinedZones(house, zone);
      const volume = house.zones
        .filter(({ id }) => joined.includes(id))
        .reduce((sum, { volumeM3 }) => sum + volumeM3, 0);
      const least = volumePerWatt * inputW;
      const arithmetic = [
        line('output', 'input of all appliances in its place', amount.power(inputW)),
        line('least volume', '4 m³ for each kW', amount.volume(least)),
        line('volume', 'of the room and of rooms joined to it', amount.volume(volume)),
      ];
      const opens = facts.zones?.[zone]?.opensToOutdoors;
      if (opens === undefined) {
        return lacks(this.rule, { ...about, arithmetic }, [
          'whether it has an outside door or a window that opens',
        ]);
      }
      return judgedBy(
        this.rule,
        { ...about, arithmetic },
        {
          held: opens ? { value: volume, limit: least, sense: 'at least' } : 'beyond the limit',
          satisfiedBy: [
            'Combustion-air links to rooms with outside doors or windows, or an opening to outdoors.',
          ],
        },
      );
    });
  },
};
