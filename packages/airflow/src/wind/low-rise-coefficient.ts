import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireBetween } from '../internal/require.js';
import { lowRiseSurfaces, type LowRiseSurface, type Shelter } from './low-rise-surfaces.js';

/** A surface of a low building among others, and the wind on it. */
export interface LowRiseSurfaceInWind {
  readonly surface: LowRiseSurface;
  /** Height of the buildings around it, relative to its own. */
  readonly shelter: Shelter;
  /** Angle between wind and the surface's own direction, as `windIncidence` gives it, 0 to 180 [°]. */
  readonly incidenceDeg: number;
}

/**
 * Mean wind pressure coefficient of a wall or roof of a low building among others [-].
 *
 * Straight lines between the entries of `lowRiseSurfaces` at every 45°.
 *
 * @param wind - surface, shelter and incidence
 * @returns pressure coefficient, referred to the speed at eaves height over the open terrain [-]
 *
 * Source: the table's (from memory).
 *
 * @example
 * lowRiseCoefficient({ surface: 'long wall', shelter: 'exposed', incidenceDeg: 0 }); // => 0.5
 */
export function lowRiseCoefficient(wind: LowRiseSurfaceInWind): number {
  const { surface, shelter, incidenceDeg } = wind;
  requireBetween('incidenceDeg', incidenceDeg, [0, 180]);
  requireKey('surface', surface, lowRiseSurfaces);
  const { byShelter } = lowRiseSurfaces[surface];
  requireKey('shelter', shelter, byShelter);
  const entries: readonly number[] = byShelter[shelter];
  const left = Math.min(3, Math.floor(incidenceDeg / 45));
  const [from = NaN, to = NaN] = entries.slice(left, left + 2);
  return from + (to - from) * (incidenceDeg / 45 - left);
}

/** Callers without types may pass any name. */
function requireKey(argument: string, key: string, table: object): void {
  if (!Object.hasOwn(table, key)) {
    throw new AirflowArgumentError(argument, key, Object.keys(table).join(', '));
  }
}
