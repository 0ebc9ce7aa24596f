import { judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { siOf } from '../internal/si-of.js';
import type { RuleFinding } from '../rule-finding.js';

const coldest = siOf('50 F', 'temperature');
const apart = siOf('12 ft', 'length');
const nearRoomK = siOf('10 F', 'temperatureDifference');

/** A diffuser of make-up air beside a hood. */
export interface JudgeDiffuserInput {
  readonly subject: string;
  /** Air as it leaves the diffuser [°C]. */
  readonly airTemperatureC?: number;
  readonly roomTemperatureC?: number;
  /** From the hood [m]. */
  readonly distanceM?: number;
  readonly directedAway?: boolean;
}

/**
 * Temperature and direction of make-up air at its diffuser; written for commercial hoods.
 *
 * Source: Minnesota Rules 1346.0508 (50 °F; within 12 ft directed away), read; IMC 508.1.1 (within 10 °F of
 * the room), from memory.
 *
 * @param input - what is known of the diffuser
 * @returns one finding for each rule of which the numbers are given
 */
export function judgeDiffuser(input: JudgeDiffuserInput): readonly RuleFinding[] {
  const { subject, airTemperatureC, roomTemperatureC, distanceM, directedAway } = input;
  const notes = ['Written for commercial hoods; guidance for a dwelling.'];
  const state = { document: 'Minnesota Rules 1346.0508', status: 'found' as const };
  const why = 'It brings in make-up air near a hood.';
  return [
    ...(airTemperatureC === undefined
      ? []
      : [
          judgedBy(
            {
              id: 'diffuser-temperature',
              title: 'Temperature of make-up air at the diffuser',
              region: 'Minnesota',
              source: state,
              notes,
            },
            {
              subject,
              why,
              arithmetic: [
                line('air', 'at the diffuser', amount.temperature(airTemperatureC)),
                line('least', '50 °F', amount.temperature(coldest)),
              ],
            },
            {
              held: { value: airTemperatureC, limit: coldest, sense: 'at least', nearBand: 1 },
              satisfiedBy: ['Tempering of the make-up air.'],
            },
          ),
        ]),
    ...(airTemperatureC === undefined || roomTemperatureC === undefined
      ? []
      : [
          judgedBy(
            {
              id: 'diffuser-near-room-temperature',
              title: 'Make-up air near the temperature of the room',
              region: 'United States',
              source: {
                document: 'International Mechanical Code',
                section: '508.1.1',
                status: 'memory',
              },
              notes,
            },
            {
              subject,
              why,
              arithmetic: [
                line('air', 'at the diffuser', amount.temperature(airTemperatureC)),
                line('room', 'given', amount.temperature(roomTemperatureC)),
                line('largest difference', '10 °F', {
                  si: nearRoomK,
                  dimension: 'temperatureDifference',
                }),
              ],
            },
            {
              held: {
                value: Math.abs(airTemperatureC - roomTemperatureC),
                limit: nearRoomK,
                sense: 'at most',
              },
              satisfiedBy: ['Tempering of the make-up air.'],
            },
          ),
        ]),
    ...(distanceM === undefined || directedAway === undefined
      ? []
      : [
          judgedBy(
            {
              id: 'diffuser-direction',
              title: 'Diffusers near a hood are directed away from it',
              region: 'Minnesota',
              source: state,
              notes,
            },
            {
              subject,
              why,
              arithmetic: [
                line('distance', 'from the hood', amount.length(distanceM)),
                line('within', '12 ft it is directed away', amount.length(apart)),
                line('directed away', 'given', directedAway ? 'yes' : 'no'),
              ],
            },
            {
              held: directedAway
                ? 'within the limit'
                : { value: distanceM, limit: apart, sense: 'at least' },
              satisfiedBy: ['A diffuser that is turned away from the hood, or a perforated one.'],
            },
          ),
        ]),
  ];
}
