import { requireBetween } from '../internal/require.js';

/**
 * Absolute pressure of the standard atmosphere [Pa].
 *
 * p = 101325 (1 − 2.25577e-5 z)^5.2559, for altitudes from −500 to 11000 m.
 *
 * @param altitudeM - altitude above sea level [m]
 * @returns absolute pressure [Pa]
 *
 * Source: ASHRAE Handbook Fundamentals, chapter 1, after the U.S. Standard Atmosphere, 1976 (from
 * memory).
 *
 * @example
 * standardPressure(1500); // => 84556
 */
export function standardPressure(altitudeM: number): number {
  requireBetween('altitudeM', altitudeM, [-500, 11000]);
  return 101325 * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
}
