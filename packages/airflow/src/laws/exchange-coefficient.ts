import { requireFinite } from '../internal/require.js';

/**
 * Discharge coefficient of a doorway whose two rooms differ in temperature, for exchange without net flow [-].
 *
 * K = 0.40 + 0.0045 |dT|: mixing at the interface of the streams takes part of a small exchange. Measured at
 * differences of up to some 40 K. With a strong net flow one way 0.65 is usual.
 *
 * @param temperatureDifferenceK - temperature of one room minus that of the other [K]
 * @returns discharge coefficient [-]
 *
 * Source: Kiel and Wilson (1986), as quoted in ASHRAE Handbook Fundamentals, chapter 16 (from memory; the range of
 * the measurements too).
 *
 * @example
 * exchangeCoefficient(5); // => 0.4225
 */
export function exchangeCoefficient(temperatureDifferenceK: number): number {
  requireFinite('temperatureDifferenceK', temperatureDifferenceK);
  return 0.4 + 0.0045 * Math.abs(temperatureDifferenceK);
}
