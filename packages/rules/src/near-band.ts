import type { Assumption } from '@evendraft/house';
import type { LimitedQuantity } from './finding.js';
import { RulesArgumentError } from './rules-argument-error.js';

/** The least half-width of the band called near [Pa]. Source: our choice, about what a good gauge resolves. */
export const leastNearBandPa = 1;

/** Half-width of the band called near, as a share of a code rule's limit [-]. Source: our choice. */
export const ruleNearShare = 0.05;

/** What code rules assume beside the house's own assumptions. */
export const ruleAssumptions: readonly Assumption[] = [
  {
    origin: 'rules',
    what: 'half-width of the band called near the limit of a code rule, as a share of the limit',
    value: { si: ruleNearShare, dimension: 'ratio' },
    source: { document: 'this project', status: 'our choice' },
  },
];

/** What judging itself assumes, to be listed beside the house's own assumptions. */
export const judgingAssumptions: readonly Assumption[] = [
  {
    origin: 'limits',
    what: 'least half-width of the band called near the limit',
    value: { si: leastNearBandPa, dimension: 'pressure' },
    source: { document: 'this project', status: 'our choice' },
  },
];

/**
 * Half-width of the band around a limit in which a value is called near it [Pa].
 *
 * band = max(1 Pa, bound on the solver's error, stated uncertainty). A change from baseline is the
 * difference of two solved pressures, so the bound counts twice there.
 *
 * @param input - what is limited, the largest bound on the error of a solved pressure [Pa] (null or
 *   not finite where none is known) and the uncertainty stated by the caller [Pa]
 * @returns the half-width [Pa]
 * @throws RulesArgumentError where the stated uncertainty is negative or not finite
 */
export function nearBand(input: {
  readonly quantity: LimitedQuantity;
  readonly enclosureRadiusPa: number | null;
  readonly statedUncertaintyPa?: number;
}): number {
  const { quantity, enclosureRadiusPa, statedUncertaintyPa = 0 } = input;
  if (!(statedUncertaintyPa >= 0 && statedUncertaintyPa < Infinity)) {
    throw new RulesArgumentError('statedUncertaintyPa', statedUncertaintyPa, '0 or more, finite');
  }
  const solves = quantity === 'change from baseline' ? 2 : 1;
  const boundPa = Number.isFinite(enclosureRadiusPa) ? solves * (enclosureRadiusPa ?? 0) : 0;
  return Math.max(leastNearBandPa, boundPa, statedUncertaintyPa);
}
