import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requirePositive } from '../internal/require.js';
import type { DuctSize } from './duct-size.js';

/** Axes of a flat oval duct: two half circles and the rectangle between them. */
export interface FlatOvalAxes {
  /** Longer inner axis, half circles included [m]. */
  readonly majorAxisM: number;
  /** Shorter inner axis, the diameter of the half circles [m]. */
  readonly minorAxisM: number;
}

/**
 * Cross-section of a flat oval duct.
 *
 * A = pi b^2/4 + b (a - b); P = pi b + 2 (a - b); De = 1.55 A^0.625 / P^0.25 for the diameter of equal friction.
 *
 * @param axes - the longer and the shorter inner axis
 * @returns area, perimeter and diameters
 *
 * Source: Heyt and Diaz, ASHRAE Trans. 81 (1975), from memory.
 *
 * @example
 * flatOvalDuctSize({ majorAxisM: 0.2, minorAxisM: 0.1 }).areaM2; // => 0.017854
 */
export function flatOvalDuctSize({ majorAxisM, minorAxisM }: FlatOvalAxes): DuctSize {
  requirePositive('majorAxisM', majorAxisM);
  requirePositive('minorAxisM', minorAxisM);
  if (majorAxisM < minorAxisM) {
    throw new AirflowArgumentError('majorAxisM', majorAxisM, 'the minor axis or more');
  }
  const flatM = majorAxisM - minorAxisM;
  const areaM2 = (Math.PI / 4) * minorAxisM * minorAxisM + minorAxisM * flatM;
  const perimeterM = Math.PI * minorAxisM + 2 * flatM;
  return {
    areaM2,
    perimeterM,
    hydraulicDiameterM: (4 * areaM2) / perimeterM,
    equalFrictionDiameterM: (1.55 * areaM2 ** 0.625) / perimeterM ** 0.25,
  };
}
