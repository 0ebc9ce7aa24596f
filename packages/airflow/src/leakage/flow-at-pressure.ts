import { requireBetween, requireFinite, requireNotNegative } from '../internal/require.js';

/** A leak and the pressure across it. */
export interface LeakAtPressure {
  /** Leakage coefficient [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow exponent n, 0.5 to 1 [-]. */
  readonly exponent: number;
  /** Pressure difference across the leak, of either sign [Pa]. */
  readonly pressurePa: number;
}

/**
 * Volume flow through a leak, in the air at which its coefficient is stated [m3/s].
 *
 * Q = sgn(dp) C |dp|^n. For the flow of other air, use the power law among the flow laws.
 *
 * @param leak - coefficient, exponent and pressure difference
 * @returns volume flow with the sign of the pressure [m3/s]
 *
 * Source: ASTM E779-10/19, section 9; ISO 9972:2015, section 8 (both from memory).
 *
 * @example
 * flowAtPressure({ coefficientM3PerSPaN: 0.05, exponent: 0.5, pressurePa: -4 }); // => -0.1
 */
export function flowAtPressure(leak: LeakAtPressure): number {
  const { coefficientM3PerSPaN, exponent, pressurePa } = leak;
  requireNotNegative('coefficientM3PerSPaN', coefficientM3PerSPaN);
  requireBetween('exponent', exponent, [0.5, 1]);
  requireFinite('pressurePa', pressurePa);
  return Math.sign(pressurePa) * coefficientM3PerSPaN * Math.abs(pressurePa) ** exponent;
}
