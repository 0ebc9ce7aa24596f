import { requireNotNegative, requirePositive } from '../internal/require.js';

/** Velocities before and behind a sudden enlargement. */
export interface Enlargement {
  /** Velocity in the narrow duct [m/s]. */
  readonly velocityBeforeMPerS: number;
  /** Velocity in the wide duct [m/s]. */
  readonly velocityBehindMPerS: number;
  /** Density of the air [kg/m3]. */
  readonly densityKgPerM3: number;
}

/**
 * Loss of total pressure where a duct widens suddenly [Pa].
 *
 * dp = rho (v1 - v2)^2/2. As a loss coefficient by the narrow duct's velocity pressure: K = (1 - A1/A2)^2.
 *
 * @param enlargement - velocities before and behind, and density
 * @returns loss of total pressure [Pa]
 *
 * Source: Borda and Carnot, momentum balance (derived).
 *
 * @example
 * enlargementLoss({ velocityBeforeMPerS: 10, velocityBehindMPerS: 5, densityKgPerM3: 1.2 }); // => 15
 */
export function enlargementLoss(enlargement: Enlargement): number {
  const { velocityBeforeMPerS, velocityBehindMPerS, densityKgPerM3 } = enlargement;
  requireNotNegative('velocityBeforeMPerS', velocityBeforeMPerS);
  requireNotNegative('velocityBehindMPerS', velocityBehindMPerS);
  requirePositive('densityKgPerM3', densityKgPerM3);
  return 0.5 * densityKgPerM3 * (velocityBeforeMPerS - velocityBehindMPerS) ** 2;
}

/**
 * Loss coefficient of a sudden enlargement, by the velocity pressure of the narrow duct [-].
 *
 * K = (1 - A1/A2)^2; 1 into the open.
 *
 * @param areaRatio - area of the narrow by that of the wide duct, 0 to 1 [-]
 * @returns loss coefficient [-]
 *
 * @example
 * enlargementLossCoefficient(0.5); // => 0.25
 */
export function enlargementLossCoefficient(areaRatio: number): number {
  requireNotNegative('areaRatio', areaRatio);
  requireNotNegative('1 - areaRatio', 1 - areaRatio);
  return (1 - areaRatio) ** 2;
}
