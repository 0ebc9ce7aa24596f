import type { Air } from './air.js';
import { airViscosity } from './air-viscosity.js';

/**
 * The air at which every leakage coefficient and every `scfm` is stated: dry, 20 °C, sea level.
 *
 * Its density is defined as 1.2041 kg/m3 (`airAt` gives 1.204097 there); its viscosity is that of
 * Sutherland's formula, 1.8134e-5 Pa s, which the standard prints as 1.813e-5.
 *
 * Source: ASTM E779-10/19, section 9.6 (from memory).
 */
export const referenceAir: Air & { readonly pressurePa: number } = Object.freeze({
  temperatureC: 20,
  pressurePa: 101325,
  densityKgPerM3: 1.2041,
  // Not the rounded value, so that air of 20 °C changes no coefficient, not even in the fifth digit.
  viscosityPaS: airViscosity(20),
});
