import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireFinite, requireNotNegative } from '../internal/require.js';
import type { ShelterClass } from './shelter-classes.js';

/** A house known by its leakage area, and the weather around it. */
export interface HouseInWeather {
  /** Effective leakage area at 4 Pa and a discharge coefficient of 1 [m2]. */
  readonly effectiveLeakageAreaM2: number;
  /** Indoors minus outdoors [K]. */
  readonly temperatureDifferenceK: number;
  /** Wind speed at the weather station [m/s]. */
  readonly windSpeedMPerS: number;
  readonly storeys: 1 | 2 | 3;
  readonly shelterClass: ShelterClass;
}

/** By storeys [(L/s)²/(cm⁴ K)]. */
const stackCoefficients = { 1: 0.000145, 2: 0.00029, 3: 0.000435 } as const;

/** By shelter class, then storeys [(L/s)²/(cm⁴ (m/s)²)]. */
const windCoefficients = {
  1: { 1: 0.000319, 2: 0.00042, 3: 0.000494 },
  2: { 1: 0.000246, 2: 0.000325, 3: 0.000382 },
  3: { 1: 0.000174, 2: 0.000231, 3: 0.000271 },
  4: { 1: 0.000104, 2: 0.000137, 3: 0.000161 },
  5: { 1: 0.000032, 2: 0.000042, 3: 0.000049 },
} as const;

/**
 * Infiltration of a house by the basic superposition model, without solving its network [m3/s].
 *
 * Q = A sqrt(C_s |dT| + C_w U²). A yardstick beside a solved balance, not a replacement: it knows the leakage only as
 * one area with half of it in floor and ceiling, and neither fans nor rooms. Measured infiltration of single houses
 * scatters around it by tens of percent.
 *
 * @param house - leakage area, storeys, shelter and weather
 * @returns volume flow of outdoor air [m3/s]
 *
 * Source: Sherman and Grimsrud, ASHRAE Transactions 86(2), 1980, 778-807; coefficients of ASHRAE Handbook
 * Fundamentals (2009 to 2017), chapter 16 (from memory).
 *
 * @example
 * superposedInfiltration({
 *   effectiveLeakageAreaM2: 0.05,
 *   temperatureDifferenceK: 39,
 *   windSpeedMPerS: 6.7,
 *   storeys: 2,
 *   shelterClass: 3,
 * }); // => 0.0736
 */
export function superposedInfiltration(house: HouseInWeather): number {
  const { effectiveLeakageAreaM2, temperatureDifferenceK, windSpeedMPerS } = house;
  const { storeys, shelterClass } = house;
  requireNotNegative('effectiveLeakageAreaM2', effectiveLeakageAreaM2);
  requireFinite('temperatureDifferenceK', temperatureDifferenceK);
  requireNotNegative('windSpeedMPerS', windSpeedMPerS);
  // Callers without types may pass any number.
  if (!Object.hasOwn(stackCoefficients, storeys)) {
    throw new AirflowArgumentError('storeys', storeys, '1, 2, 3');
  }
  if (!Object.hasOwn(windCoefficients, shelterClass)) {
    throw new AirflowArgumentError('shelterClass', shelterClass, '1, 2, 3, 4, 5');
  }
  const stack = stackCoefficients[storeys] * Math.abs(temperatureDifferenceK);
  const wind = windCoefficients[shelterClass][storeys] * windSpeedMPerS ** 2;
  // The tables are for cm² and L/s.
  return 10 * effectiveLeakageAreaM2 * Math.sqrt(stack + wind);
}
