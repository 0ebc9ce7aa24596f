import { requireFinite, requireNotNegative, requirePositive } from '../internal/require.js';

/** Wind that meets a face of a building. */
export interface WindOnFace {
  /** Pressure coefficient of the face for this direction of the wind [-]. */
  readonly coefficient: number;
  /** Wind speed at the height to which the coefficient refers, usually the eaves [m/s]. */
  readonly speedMPerS: number;
  /** Density of outdoor air [kg/m3]. */
  readonly densityKgPerM3: number;
}

/**
 * Pressure of the wind on a face, minus undisturbed outdoors at the same height [Pa].
 *
 * p = C_p rho U² / 2. Positive presses on the face; a face in suction is negative.
 *
 * @param wind - the face's coefficient, the local speed and the density
 * @returns pressure at the face minus undisturbed outdoors [Pa]
 *
 * Source: ASHRAE Handbook Fundamentals, chapter 24 (from memory); any text on fluid mechanics.
 *
 * @example
 * windPressure({ coefficient: 0.7, speedMPerS: 5, densityKgPerM3: 1.2 }); // => 10.5
 */
export function windPressure(wind: WindOnFace): number {
  const { coefficient, speedMPerS, densityKgPerM3 } = wind;
  requireFinite('coefficient', coefficient);
  requireNotNegative('speedMPerS', speedMPerS);
  requirePositive('densityKgPerM3', densityKgPerM3);
  return (coefficient * densityKgPerM3 * speedMPerS * speedMPerS) / 2;
}
