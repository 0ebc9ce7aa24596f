import { judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { leastNearBandPa } from '../near-band.js';
import type { RuleFinding } from '../rule-finding.js';

/** Suction on the ground from which this project warns; no limit is published [Pa]. Source: our choice. */
export const soilGasGuidePa = -5;

/** Pressure of the house against its garage from which this project warns [Pa]. Source: common practice, no source. */
export const garageGuidePa = 0;

/**
 * Suction of a basement or slab room on the ground, which draws in soil gas.
 *
 * More suction draws more; there is no threshold below which it draws nothing.
 *
 * @param input - the zone, its pressure against outdoors at its floor [Pa], and another guide than ours [Pa]
 * @returns one finding
 */
export function judgeSoilGasSuction(input: {
  readonly zone: string;
  readonly pressurePa: number;
  readonly guidePa?: number;
}): RuleFinding {
  const { zone, pressurePa, guidePa = soilGasGuidePa } = input;
  return judgedBy(
    {
      id: 'soil-gas-suction',
      title: 'Suction on the ground',
      region: 'everywhere',
      source: { document: 'this project', status: 'our choice' },
      notes: [
        'No limit is published: any suction draws soil gas, radon among it. Only a measurement of radon tells how much.',
      ],
    },
    {
      subject: zone,
      why: 'It touches the ground.',
      arithmetic: [
        line('pressure', 'zone minus outdoors, at its floor', amount.pressure(pressurePa)),
        line('guide', 'from which a warning is given', amount.pressure(guidePa)),
      ],
    },
    {
      held: { value: pressurePa, limit: guidePa, sense: 'at least', nearBand: leastNearBandPa },
      satisfiedBy: [
        'Less exhaust at once, make-up air, a tighter slab, or a fan under the slab that holds the ground lower.',
      ],
    },
  );
}

/**
 * Pressure of the house against its garage: where it is lower, garage air comes in.
 *
 * @param input - the zone at the garage wall, house minus garage at one height [Pa], another guide than ours [Pa]
 * @returns one finding
 */
export function judgeGarageWall(input: {
  readonly zone: string;
  readonly againstGaragePa: number;
  readonly guidePa?: number;
}): RuleFinding {
  const { zone, againstGaragePa, guidePa = garageGuidePa } = input;
  return judgedBy(
    {
      id: 'garage-wall',
      title: 'Pressure of the house against its garage',
      region: 'everywhere',
      source: { document: 'common practice', status: 'common practice, no source' },
      notes: [
        'Car exhaust and fuel vapour come through the wall wherever the house is lower; never let an engine run in the garage.',
      ],
    },
    {
      subject: zone,
      why: 'A wall, ceiling or door parts it from the garage.',
      arithmetic: [
        line('pressure', 'house minus garage', amount.pressure(againstGaragePa)),
        line('guide', 'from which a warning is given', amount.pressure(guidePa)),
      ],
    },
    {
      held: {
        value: againstGaragePa,
        limit: guidePa,
        sense: 'at least',
        nearBand: leastNearBandPa,
      },
      satisfiedBy: [
        'A sealed wall and a door that closes tight, less exhaust in the house, or exhaust in the garage.',
      ],
    },
  );
}
