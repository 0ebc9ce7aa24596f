import { requireKelvin } from '../internal/require.js';

/**
 * Dynamic viscosity of air [Pa s].
 *
 * Sutherland: mu = 1.458e-6 T^1.5 / (T + 110.4), T in kelvin. It does not depend on pressure.
 *
 * @param temperatureC - temperature [°C]
 * @returns dynamic viscosity [Pa s]
 *
 * Source: U.S. Standard Atmosphere, 1976 (from memory).
 *
 * @example
 * airViscosity(20); // => 0.000018134
 */
export function airViscosity(temperatureC: number): number {
  const kelvin = requireKelvin(temperatureC);
  return (1.458e-6 * kelvin * Math.sqrt(kelvin)) / (kelvin + 110.4);
}
