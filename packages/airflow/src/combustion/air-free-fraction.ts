import { requireBetween } from '../internal/require.js';

/** A reading in flue gas beside the oxygen found there. */
export interface FlueReading {
  /** Measured fraction of the dry gas, in any unit that the answer shall have, such as ppm. */
  readonly measured: number;
  /** Oxygen in the dry gas, by volume [-]. */
  readonly oxygenFraction: number;
}

/** Oxygen in air to which readings are converted by convention [-]. */
const oxygenInAir = 0.209;

/**
 * What a reading in flue gas would be without excess or dilution air.
 *
 * air-free = measured 20.9/(20.9 − O2), in percent.
 *
 * @param reading - measured fraction and oxygen
 * @returns air-free fraction, in the unit of the reading
 *
 * Source: common to test standards for gas appliances (from memory).
 *
 * @example
 * airFreeFraction({ measured: 50, oxygenFraction: 0.1045 }); // => 100
 */
export function airFreeFraction(reading: FlueReading): number {
  const { measured, oxygenFraction } = reading;
  requireBetween('measured', measured, [0, 1e6]);
  // Nothing can be said of a gas that is almost air.
  requireBetween('oxygenFraction', oxygenFraction, [0, 0.205]);
  return (measured * oxygenInAir) / (oxygenInAir - oxygenFraction);
}
