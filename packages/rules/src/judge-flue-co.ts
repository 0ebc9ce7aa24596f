import type { Appliance } from '@evendraft/house';
import { judgedBy } from './internal/answer.js';
import { appliesToAppliance } from './internal/applies-to-appliance.js';
import { amount, line } from './internal/arithmetic-line.js';
import type { LimitSet } from './limit-set.js';
import type { RuleFinding } from './rule-finding.js';

/** Carbon monoxide in the gas of an appliance, as an analyser shows it. */
export interface JudgeFlueCoInput {
  readonly limitSet: LimitSet;
  readonly appliance: Appliance;
  /** All appliances of the house, for shared vents. */
  readonly appliances: readonly Appliance[];
  /** Carbon monoxide as measured [ppm]. */
  readonly measuredPpm: number;
  /** Oxygen in the same gas, as a share of the dry gas [-]. */
  readonly oxygenShare: number;
}

/** Oxygen in dry outdoor air as the trade's formula takes it [-]. */
const oxygenOfAir = 0.209;

/**
 * Carbon monoxide with the air in the gas taken off [ppm].
 *
 * air-free = measured × 20.9 / (20.9 − O₂ %). Common practice of the trade, no source.
 *
 * @param measuredPpm - as measured [ppm]
 * @param oxygenShare - oxygen in the dry gas, below that of air [-]
 * @returns the air-free concentration; not finite where the gas is air [ppm]
 *
 * @example
 * airFreeCo(100, 0.09).toFixed(1); // => '175.6'
 */
export function airFreeCo(measuredPpm: number, oxygenShare: number): number {
  return (measuredPpm * oxygenOfAir) / Math.max(oxygenOfAir - oxygenShare, 0);
}

/**
 * One finding for each limit of carbon monoxide in the gas that a set has for an appliance.
 *
 * @param input - set, appliance and what an analyser shows
 * @returns the findings; none where the set has no limit for it
 */
export function judgeFlueCo(input: JudgeFlueCoInput): readonly RuleFinding[] {
  const { limitSet, appliance, appliances, measuredPpm, oxygenShare } = input;
  const airFreePpm = airFreeCo(measuredPpm, oxygenShare);
  return (limitSet.flueCo ?? [])
    .filter(({ applies }) => appliesToAppliance(applies ?? [], appliance, appliances) === 'yes')
    .map((limit) => {
      const airFree = limit.basis === 'air-free';
      const value = airFree ? airFreePpm : measuredPpm;
      return judgedBy(
        {
          id: `${limitSet.id}-${limit.id}`,
          title: `Carbon monoxide in the gas: ${limit.condition}`,
          region: limitSet.region ?? 'everywhere',
          source: limit.source,
          ...(limit.note === undefined ? {} : { notes: [limit.note] }),
        },
        {
          subject: appliance.id,
          why: `It is for a ${appliance.kind}.`,
          arithmetic: [
            line('measured', 'as the analyser shows it', amount.concentration(measuredPpm * 1e-6)),
            ...(airFree
              ? [
                  line('oxygen', 'in the same gas, dry', amount.ratio(oxygenShare)),
                  line(
                    'air-free',
                    'measured × 20.9 / (20.9 − oxygen in %)',
                    Number.isFinite(airFreePpm)
                      ? amount.concentration(airFreePpm * 1e-6)
                      : 'no number: the gas is air',
                  ),
                ]
              : []),
            line('limit', limit.basis, amount.concentration(limit.limitPpm * 1e-6)),
          ],
        },
        {
          held: { value, limit: limit.limitPpm, sense: 'at most' },
          satisfiedBy: ['Stop the appliance and have the licensed trade repair or tune it.'],
        },
      );
    });
}
