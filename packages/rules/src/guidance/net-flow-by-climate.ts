import { judgedBy, notMeantFor, type Rule } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { siOf } from '../internal/si-of.js';
import type { RuleFinding } from '../rule-finding.js';

/** Climates in which the sign of the pressure matters to the walls. */
export type WallClimate = 'hot and humid' | 'very cold' | 'other';

const perFloorArea = siOf('0.075 cfm/ft2', 'flowPerArea');

/** The flow that mechanical systems push into or pull out of a house. */
export interface JudgeNetFlowInput {
  readonly climate: WallClimate;
  /** Mechanical exhaust less mechanical supply; negative is net supply [m³/s]. */
  readonly netExhaustM3PerS: number;
  readonly floorAreaM2: number;
}

/**
 * Net exhaust in hot humid climates and net supply in very cold ones: 7.5 cfm for each 100 ft² at most.
 *
 * Suction pulls humid air into cool walls; pressure pushes moist air into cold ones. Source: ASHRAE 62.2-2007
 * and 2010, 4.6, read.
 *
 * @param input - climate, net flow and floor area
 * @returns one finding
 */
export function judgeNetFlow(input: JudgeNetFlowInput): RuleFinding {
  const { climate, netExhaustM3PerS, floorAreaM2 } = input;
  const rule: Rule = {
    id: 'net-flow-by-climate',
    title: 'Net exhaust or net supply by climate',
    region: 'United States',
    source: { document: 'ASHRAE 62.2', edition: '2007 and 2010', section: '4.6', status: 'found' },
    notes: ['Meant for ventilation that runs for long, not for a hood that runs for minutes.'],
  };
  const limit = perFloorArea * floorAreaM2;
  const lines = [
    line('net exhaust', 'mechanical exhaust less supply', amount.flow(netExhaustM3PerS)),
    line('floor area', 'given', amount.area(floorAreaM2)),
    line('allowed', '7.5 cfm for each 100 ft²', amount.flow(limit)),
  ];
  if (climate === 'other') {
    return notMeantFor(rule, {
      why: 'It is for hot humid and very cold climates.',
      arithmetic: lines,
    });
  }
  const humid = climate === 'hot and humid';
  return judgedBy(
    rule,
    {
      why: humid
        ? 'In a hot humid climate suction pulls moist air into cool walls.'
        : 'In a very cold climate pressure pushes moist air into cold walls.',
      arithmetic: lines,
    },
    {
      held: {
        value: humid ? netExhaustM3PerS : -netExhaustM3PerS,
        limit,
        sense: 'at most',
      },
      satisfiedBy: [
        humid ? 'Supply that balances the exhaust.' : 'Exhaust that balances the supply.',
      ],
    },
  );
}
