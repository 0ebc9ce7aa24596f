import { judgedBy, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { combustionRooms, perThousandBtuPerHour } from '../internal/combustion-rooms.js';
import { outdoorOpenings } from '../internal/outdoor-openings.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const volumePerWatt = siOf('50 ft3', 'volume') / perThousandBtuPerHour;

/** Air changes below which the standard method may not be used [1/s]. Source: NFPA 54-2012, 9.3.2. */
const leastAirChange = siOf('0.4 1/h', 'airChangeRate');

/**
 * Volume that a room with gas appliances must have: 50 ft³ for each 1,000 Btu/h.
 *
 * Source: NFPA 54-2012, 9.3.2.1, read.
 *
 * @param inputW - input of all appliances in the space [W]
 * @returns the volume [m³]
 */
export function standardCombustionVolume(inputW: number): number {
  return volumePerWatt * inputW;
}

/** Combustion air from inside by the standard method. Source: NFPA 54-2012, 9.3.2.1, read. */
export const combustionAirVolume: Screen = {
  rule: {
    id: 'combustion-air-volume',
    title: 'Combustion air from indoors, standard method',
    region: 'United States',
    source: { document: 'NFPA 54', edition: '2012', section: '9.3.2.1', status: 'found' },
    notes: [
      'The method takes for granted that the house leaks enough. In a tight house a space of that volume may still starve: where fans, dryers or hoods interfere, make-up air is asked for besides (9.3.1.5).',
    ],
  },
  run({ house, facts }) {
    const known = facts.naturalAirChangePerS;
    return combustionRooms(this.rule, house, (room) => {
      if (known !== undefined && known < leastAirChange) {
        return notMeantFor(this.rule, {
          subject: room.zone,
          why: 'Its natural air change is known to be below 0.40 an hour: only the known-rate method may be used.',
        });
      }
      const required = standardCombustionVolume(room.inputW);
      const vented = (outdoorOpenings({ house, facts }, room.zone) ?? []).length > 0;
      if (vented && room.volumeM3 < required) {
        return notMeantFor(this.rule, {
          subject: room.zone,
          why: 'Its space is smaller than the method asks, and it has openings to outdoors: the rules for those judge it.',
        });
      }
      return judgedBy(
        this.rule,
        {
          subject: room.zone,
          why: room.why,
          arithmetic: [
            ...room.arithmetic,
            line(
              'required volume',
              '50 ft³ for each 1,000 Btu/h of input',
              amount.volume(required),
            ),
            line('share', 'volume over required volume', amount.ratio(room.volumeM3 / required)),
          ],
        },
        {
          held: { value: room.volumeM3, limit: required, sense: 'at least' },
          satisfiedBy: [
            'Permanent openings to more rooms, openings to outdoors, both combined, or a mechanical supply.',
            'Appliances with sealed combustion.',
          ],
        },
      );
    });
  },
};
