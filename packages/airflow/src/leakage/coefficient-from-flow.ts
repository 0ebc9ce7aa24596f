import { requireBetween, requireNotNegative, requirePositive } from '../internal/require.js';

/** A leak known by its flow at one pressure. */
export interface LeakByFlow {
  /** Volume flow [m3/s]. */
  readonly volumeFlowM3PerS: number;
  /** Pressure difference at which it flows, without its sign [Pa]. */
  readonly pressurePa: number;
  /** Flow exponent n, 0.5 to 1 [-]. */
  readonly exponent: number;
}

/**
 * Leakage coefficient from a flow at one pressure [m3/(s Pa^n)].
 *
 * C = Q / dp^n, for the air in which the flow was stated; see `coefficientAtReferenceAir`.
 *
 * @param leak - flow, pressure and exponent
 * @returns leakage coefficient [m3/(s Pa^n)]
 *
 * Source: ASTM E779-10/19, section 9; ISO 9972:2015, section 8 (both from memory).
 *
 * @example
 * coefficientFromFlow({ volumeFlowM3PerS: 0.1, pressurePa: 4, exponent: 0.5 }); // => 0.05
 */
export function coefficientFromFlow(leak: LeakByFlow): number {
  const { volumeFlowM3PerS, pressurePa, exponent } = leak;
  requireNotNegative('volumeFlowM3PerS', volumeFlowM3PerS);
  requirePositive('pressurePa', pressurePa);
  requireBetween('exponent', exponent, [0.5, 1]);
  return volumeFlowM3PerS / pressurePa ** exponent;
}
