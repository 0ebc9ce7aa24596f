import { judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { germanRooms, outputNote } from '../internal/german-rooms.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const flowPerWatt = siOf('1.6 m3/h', 'volumeFlow') / siOf('1 kW', 'power');
const suctionPa = 4;

/**
 * Combustion air of 1.6 m³/h for each kW at 4 Pa of suction, through the leaks of the house.
 *
 * Leakage at 4 Pa = tested flow × (4 / test pressure)^n, for the tight end of the airtightness. Source:
 * MFeuVO section 3 and DVGW-TRGI; from memory.
 */
export const germanCombustionAir: Screen = {
  rule: {
    id: 'german-combustion-air',
    title: 'Combustion air at 4 Pa through the leaks of the house',
    region: 'Germany',
    source: { document: 'MFeuVO; DVGW-TRGI', section: '3', status: 'memory' },
    notes: [
      outputNote,
      'All leaks of the house are counted, as with every inside door open; exhaust that runs takes of the same air and is not counted.',
    ],
  },
  run({ house }) {
    const [tight] = house.airtightness.cases;
    return germanRooms(this.rule, house, ({ zone, inputW }) => {
      const wanted = flowPerWatt * inputW;
      const { exponent } = house.airtightness;
      const leakage =
        tight === undefined
          ? Number.NaN
          : tight.volumeFlowM3PerS * (suctionPa / tight.pressurePa) ** exponent;
      return judgedBy(
        this.rule,
        {
          subject: zone,
          why: 'An appliance that depends on room air stands in it.',
          arithmetic: [
            line('output', 'input of all appliances in its place', amount.power(inputW)),
            line('wanted', '1.6 m³/h for each kW', amount.flow(wanted)),
            ...(tight === undefined
              ? []
              : [
                  line(
                    'leakage',
                    `${tight.name}, at its test pressure`,
                    amount.flow(tight.volumeFlowM3PerS),
                  ),
                  line('test pressure', 'given', amount.pressure(tight.pressurePa)),
                ]),
            line('exponent', 'of the leaks', String(exponent)),
            line(
              'leakage at 4 Pa',
              'leakage × (4 Pa / test pressure)^exponent',
              amount.flow(leakage),
            ),
          ],
        },
        {
          held: { value: leakage, limit: wanted, sense: 'at least' },
          satisfiedBy: [
            'An opening to outdoors for combustion air, or appliances with air of their own.',
          ],
        },
      );
    });
  },
};
