import { judgedBy, lacks } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { combustionRooms, perThousandBtuPerHour } from '../internal/combustion-rooms.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const others = siOf('21 ft3', 'volume');
const fanAssisted = siOf('15 ft3', 'volume');
const hour = siOf('1 h', 'time');

/** Highest rate that may be used [1/s]. Source: NFPA 54-2012, 9.3.2.2 (3), read. */
const highestRate = siOf('0.6 1/h', 'airChangeRate');

/**
 * Volume by the known-infiltration method [m³].
 *
 * V = (21 ft³ × I_other + 15 ft³ × I_fan) / (ACH × 1,000 Btu/h), ACH no more than 0.60. Source: NFPA
 * 54-2012, 9.3.2.2, read; that the two volumes are added, as its wording is read.
 *
 * @param input - inputs [W] and the natural air change rate [1/s]
 * @returns the volume [m³]
 */
function knownRateCombustionVolume(input: {
  readonly otherW: number;
  readonly fanAssistedW: number;
  readonly airChangePerS: number;
}): number {
  const changesPerHour = Math.min(input.airChangePerS, highestRate) * hour;
  return (
    (others * input.otherW + fanAssisted * input.fanAssistedW) /
    (changesPerHour * perThousandBtuPerHour)
  );
}

/** Combustion air from inside by the known-infiltration method. Source: NFPA 54-2012, 9.3.2.2, read. */
export const combustionAirKnownRate: Screen = {
  rule: {
    id: 'combustion-air-known-rate',
    title: 'Combustion air from indoors, known air-infiltration rate',
    region: 'United States',
    source: { document: 'NFPA 54', edition: '2012', section: '9.3.2.2', status: 'found' },
    notes: [
      'It must be used where the rate is known to be below 0.40 an hour; a rate above 0.60 counts as 0.60.',
    ],
  },
  run({ house, facts }) {
    const known = facts.naturalAirChangePerS;
    return combustionRooms(this.rule, house, (room) => {
      if (known === undefined || known <= 0) {
        return lacks(
          this.rule,
          { subject: room.zone, why: room.why, arithmetic: room.arithmetic },
          [
            'the natural air change rate of the house, above zero; an airtightness at 50 Pa is not one',
          ],
        );
      }
      const otherW = room.inputW - room.fanAssistedW;
      const required = knownRateCombustionVolume({
        otherW,
        fanAssistedW: room.fanAssistedW,
        airChangePerS: known,
      });
      return judgedBy(
        this.rule,
        {
          subject: room.zone,
          why: room.why,
          arithmetic: [
            ...room.arithmetic,
            line('air change', 'given, natural', amount.airChange(known)),
            line(
              'air change used',
              'no more than 0.60 an hour',
              amount.airChange(Math.min(known, highestRate)),
            ),
            line('other input', 'burners without a fan', amount.power(otherW)),
            line('fan-assisted input', 'burners with a fan', amount.power(room.fanAssistedW)),
            line(
              'required volume',
              '(21 ft³ × other + 15 ft³ × fan-assisted input in 1,000 Btu/h) / air changes an hour',
              amount.volume(required),
            ),
          ],
        },
        {
          held: { value: room.volumeM3, limit: required, sense: 'at least' },
          satisfiedBy: [
            'Permanent openings to more rooms, openings to outdoors, both combined, or a mechanical supply.',
          ],
        },
      );
    });
  },
};
