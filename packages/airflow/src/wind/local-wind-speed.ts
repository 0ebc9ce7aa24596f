import { requireNotNegative, requirePositive } from '../internal/require.js';
import { AirflowArgumentError } from '../airflow-argument-error.js';
import { terrains, type Terrain } from './terrains.js';

/** A measured wind and the place where its speed is wanted. */
export interface WindTransfer {
  /** Speed at the weather station [m/s]. */
  readonly stationSpeedMPerS: number;
  /** Height of the station's anemometer above ground; 10 m is usual [m]. */
  readonly stationHeightM: number;
  /** Terrain around the station; `open` is usual. */
  readonly stationTerrain: Terrain;
  /** Height above ground where the speed is wanted, usually the eaves [m]. */
  readonly heightM: number;
  /** Terrain around the building. */
  readonly terrain: Terrain;
}

/**
 * Wind speed at a building, from the speed at a weather station [m/s].
 *
 * U = U_s (d_s/h_s)^a_s (h/d)^a, with the exponent a and the boundary layer d of each terrain. Above
 * the boundary layer the speed stays what it is at its top. Close to the ground, below the height of
 * the obstructions, the profile says little: shelter by neighbours is a matter of the coefficient.
 *
 * @param transfer - station and building
 * @returns wind speed at the building [m/s]
 *
 * Source: ASHRAE Handbook Fundamentals, chapter 24 (from memory); parameters in `terrains`.
 *
 * @example
 * localWindSpeed({
 *   stationSpeedMPerS: 10,
 *   stationHeightM: 10,
 *   stationTerrain: 'open',
 *   heightM: 5,
 *   terrain: 'suburban',
 * }); // => 6.154
 */
export function localWindSpeed(transfer: WindTransfer): number {
  const { stationSpeedMPerS, stationHeightM, stationTerrain, heightM, terrain } = transfer;
  requireNotNegative('stationSpeedMPerS', stationSpeedMPerS);
  requirePositive('stationHeightM', stationHeightM);
  requireNotNegative('heightM', heightM);
  const station = shareOfGradientSpeed(stationHeightM, stationTerrain, 'stationTerrain');
  return (stationSpeedMPerS / station) * shareOfGradientSpeed(heightM, terrain, 'terrain');
}

/** Speed at a height, relative to the speed above the boundary layer. */
function shareOfGradientSpeed(heightM: number, terrain: Terrain, argument: string): number {
  // Looked up as any string, because callers without types may pass one.
  const profile = Object.hasOwn(terrains, terrain) ? terrains[terrain] : undefined;
  if (profile === undefined) {
    throw new AirflowArgumentError(argument, terrain, Object.keys(terrains).join(', '));
  }
  return Math.min(1, heightM / profile.boundaryLayerM) ** profile.exponent;
}
