import type { Air } from './air.js';

/**
 * The air at which every leakage coefficient and every `scfm` is stated: dry, 20 °C, sea level.
 *
 * The rounded values are the definition; `airAt` gives 1.204097 kg/m3 and 1.81341e-5 Pa s there.
 *
 * Source: ASTM E779-10/19, section 9.6 (from memory).
 */
export const referenceAir: Air & { readonly pressurePa: number } = Object.freeze({
  temperatureC: 20,
  pressurePa: 101325,
  densityKgPerM3: 1.2041,
  viscosityPaS: 1.813e-5,
});
