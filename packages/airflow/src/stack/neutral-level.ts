import { requireFinite, requirePositive } from '../internal/require.js';
import { gravity } from '../air/gravity.js';

/** A zone's pressure at a known height, and the air inside and outside. */
export interface NeutralLevelState {
  /** Zone minus outdoors at the height of reference [Pa]. */
  readonly pressurePa: number;
  /** Density of the zone's air [kg/m3]. */
  readonly zoneDensityKgPerM3: number;
  /** Density of outdoor air [kg/m3]. */
  readonly outdoorDensityKgPerM3: number;
}

/**
 * Height above the reference at which a zone and outdoors have the same pressure [m].
 *
 * h = p / ((rho_zone − rho_out) g). In a heated house that is depressurized at the floor it lies
 * above the floor; it may lie outside the house.
 *
 * @param state - pressure at the reference and the two densities
 * @returns height above the reference [m], or `undefined` when both densities are equal
 *
 * Source: hydrostatics; ASHRAE Handbook Fundamentals, chapter 16, neutral pressure level (from
 * memory).
 *
 * @example
 * neutralLevel({ pressurePa: -2, zoneDensityKgPerM3: 1.2, outdoorDensityKgPerM3: 1.34 }); // => 1.457
 */
export function neutralLevel(state: NeutralLevelState): number | undefined {
  const { pressurePa, zoneDensityKgPerM3, outdoorDensityKgPerM3 } = state;
  requireFinite('pressurePa', pressurePa);
  requirePositive('zoneDensityKgPerM3', zoneDensityKgPerM3);
  requirePositive('outdoorDensityKgPerM3', outdoorDensityKgPerM3);
  if (zoneDensityKgPerM3 === outdoorDensityKgPerM3) return undefined;
  // A pressure of exactly zero would otherwise give −0.
  if (pressurePa === 0) return 0;
  return pressurePa / ((zoneDensityKgPerM3 - outdoorDensityKgPerM3) * gravity);
}
