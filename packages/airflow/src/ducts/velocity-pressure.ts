import { requireFinite, requireNotNegative, requirePositive } from '../internal/require.js';

/**
 * Velocity pressure of moving air [Pa].
 *
 * pv = rho v^2/2.
 *
 * @param velocityMPerS - velocity, either sign [m/s]
 * @param densityKgPerM3 - density [kg/m3]
 * @returns velocity pressure [Pa]
 *
 * @example
 * velocityPressure(10, 1.2); // => 60
 */
export function velocityPressure(velocityMPerS: number, densityKgPerM3: number): number {
  requireFinite('velocityMPerS', velocityMPerS);
  requirePositive('densityKgPerM3', densityKgPerM3);
  return 0.5 * densityKgPerM3 * velocityMPerS * velocityMPerS;
}

/**
 * Velocity of air from its velocity pressure [m/s].
 *
 * v = sqrt(2 pv/rho), the inverse of `velocityPressure`.
 *
 * @param velocityPressurePa - velocity pressure [Pa]
 * @param densityKgPerM3 - density [kg/m3]
 * @returns velocity [m/s]
 *
 * @example
 * velocityFromPressure(60, 1.2); // => 10
 */
export function velocityFromPressure(velocityPressurePa: number, densityKgPerM3: number): number {
  requireNotNegative('velocityPressurePa', velocityPressurePa);
  requirePositive('densityKgPerM3', densityKgPerM3);
  return Math.sqrt((2 * velocityPressurePa) / densityKgPerM3);
}
