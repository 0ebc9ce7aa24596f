import { requireBetween, requireNotNegative } from '../internal/require.js';
import type { CombustionProducts } from './products-of-combustion.js';

/** An appliance of which a part of the products comes into the room. */
export interface Spillage {
  readonly products: CombustionProducts;
  /** Input at the higher heating value [W]. */
  readonly inputW: number;
  /** Share of the products that does not leave through the vent, 0 to 1 [-]. */
  readonly spilledShare: number;
  /** Carbon monoxide in the air-free dry products, by volume; see `airFreeFraction` [-]. */
  readonly carbonMonoxideAirFree: number;
}

/** What comes into the room. */
export interface SpilledProducts {
  /** Flue gas with its vapour and excess air [kg/s]. */
  readonly flueGasKgPerS: number;
  /** Carbon monoxide, at 20 °C and 101,325 Pa [m3/s]. */
  readonly carbonMonoxideM3PerS: number;
  /** Carbon dioxide [kg/s]. */
  readonly carbonDioxideKgPerS: number;
  /** Water vapour [kg/s]. */
  readonly waterVapourKgPerS: number;
}

/**
 * Flows of what an appliance spills into the room [kg/s].
 *
 * CO flow = air-free fraction × dry stoichiometric flue volume × input × spilled share: dilution changes neither
 * side. The others are the products by joule times input and share.
 *
 * @param spillage - products, input, spilled share and air-free CO
 * @returns flows into the room
 *
 * Source: mass balance (derived).
 */
export function spilledProducts(spillage: Spillage): SpilledProducts {
  const { products, inputW, spilledShare, carbonMonoxideAirFree } = spillage;
  requireNotNegative('inputW', inputW);
  requireBetween('spilledShare', spilledShare, [0, 1]);
  requireBetween('carbonMonoxideAirFree', carbonMonoxideAirFree, [0, 1]);
  const spilledW = inputW * spilledShare;
  return {
    flueGasKgPerS: products.flueGasKgPerJ * spilledW,
    carbonMonoxideM3PerS: carbonMonoxideAirFree * products.dryStoichiometricM3PerJ * spilledW,
    carbonDioxideKgPerS: products.carbonDioxideKgPerJ * spilledW,
    waterVapourKgPerS: products.waterVapourKgPerJ * spilledW,
  };
}
