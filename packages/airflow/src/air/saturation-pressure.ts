import { requireKelvin } from '../internal/require.js';

/**
 * Pressure of water vapour over liquid water at saturation [Pa].
 *
 * p_s = exp(59.484085 − 6790.4985/T − 5.02802 ln T), T in kelvin. Within 0.3 % of the formula of
 * CIPM-2007 from −40 to 40 °C. Below 0 °C it stays the pressure over liquid water, to which weather
 * services refer relative humidity; over ice instead, the density of air changes by less than 0.01 %.
 *
 * @param temperatureC - temperature [°C]
 * @returns saturation pressure [Pa]
 *
 * Source: constants from a technical standard for the airtightness testing of buildings (TSL2,
 * issue 1, appendix A.1.2); also used by ISO 9972:2015 (from memory).
 *
 * @example
 * saturationPressure(20); // => 2339.3
 */
export function saturationPressure(temperatureC: number): number {
  const kelvin = requireKelvin(temperatureC);
  return Math.exp(59.484085 - 6790.4985 / kelvin - 5.02802 * Math.log(kelvin));
}
