import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireBetween } from '../internal/require.js';
import { lowRiseWallCoefficients, type Shelter } from './low-rise-coefficients.js';

/** A wall of a low building among others, and the wind on it. */
export interface ShelteredWallInWind {
  /** Incidence from the wall's outward normal, 0 to 180 [°]. */
  readonly incidenceDeg: number;
  /** Height of the buildings around it, relative to its own. */
  readonly shelter: Shelter;
}

/**
 * Mean wind pressure coefficient of a wall of a low building among others [-].
 *
 * Straight lines between the entries of `lowRiseWallCoefficients` at every 45°.
 *
 * @param wall - incidence and shelter
 * @returns pressure coefficient, referred to the speed at eaves height over the open terrain [-]
 *
 * Source: the table's (from memory).
 *
 * @example
 * shelteredWallCoefficient({ incidenceDeg: 0, shelter: 'equal height' }); // => 0.2
 */
export function shelteredWallCoefficient(wall: ShelteredWallInWind): number {
  const { incidenceDeg, shelter } = wall;
  requireBetween('incidenceDeg', incidenceDeg, [0, 180]);
  const { byShelter } = lowRiseWallCoefficients;
  if (!Object.hasOwn(byShelter, shelter)) {
    throw new AirflowArgumentError('shelter', shelter, Object.keys(byShelter).join(', '));
  }
  const entries: readonly number[] = byShelter[shelter];
  const left = Math.min(3, Math.floor(incidenceDeg / 45));
  const [from = NaN, to = NaN] = entries.slice(left, left + 2);
  return from + (to - from) * (incidenceDeg / 45 - left);
}
