import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireNotNegative } from '../internal/require.js';

/** Rules of thumb for the air that enters a house when a fan without counterpart runs. */
export type FanRule = 'half fan' | 'quadrature';

/** Infiltration without the fan, and the fan. */
export interface InfiltrationAndFan {
  /** Infiltration that stack and wind would cause alone [m3/s]. */
  readonly infiltrationM3PerS: number;
  /** Exhaust or supply without counterpart [m3/s]. */
  readonly unbalancedFlowM3PerS: number;
  readonly rule: FanRule;
}

/**
 * Outdoor air that enters a house when an unbalanced fan runs beside stack and wind, by a rule of thumb [m3/s].
 *
 * Half fan: Q = Q0 + Qf/2 up to Qf = 2 Q0, above it Qf. Quadrature: Q = sqrt(Q0² + Qf²). Both only approximate what a
 * solved balance gives: with two equal openings and stack alone they lie from 8 % below to 23 % above it (derived).
 *
 * @param flows - infiltration without the fan, the fan's flow, and the rule
 * @returns volume flow of outdoor air [m3/s]
 *
 * Source: half fan: Palmiter and Bond, 12th AIVC Conference, 1991; quadrature: ASHRAE Handbook Fundamentals,
 * chapter 16 (from memory, both).
 *
 * @example
 * infiltrationWithFan({ infiltrationM3PerS: 0.03, unbalancedFlowM3PerS: 0.04, rule: 'quadrature' }); // => 0.05
 */
export function infiltrationWithFan(flows: InfiltrationAndFan): number {
  const { infiltrationM3PerS, unbalancedFlowM3PerS, rule } = flows;
  requireNotNegative('infiltrationM3PerS', infiltrationM3PerS);
  requireNotNegative('unbalancedFlowM3PerS', unbalancedFlowM3PerS);
  switch (rule) {
    case 'half fan':
      return Math.max(infiltrationM3PerS + unbalancedFlowM3PerS / 2, unbalancedFlowM3PerS);
    case 'quadrature':
      return Math.hypot(infiltrationM3PerS, unbalancedFlowM3PerS);
    default:
      throw new AirflowArgumentError('rule', rule, 'half fan, quadrature');
  }
}
