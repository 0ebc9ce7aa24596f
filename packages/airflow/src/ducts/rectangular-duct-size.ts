import { requirePositive } from '../internal/require.js';
import type { DuctSize } from './duct-size.js';

/** Sides of a rectangular duct. */
export interface RectangularSides {
  /** One inner side [m]. */
  readonly widthM: number;
  /** The other inner side [m]. */
  readonly heightM: number;
}

/**
 * Cross-section of a rectangular duct.
 *
 * De = 1.30 (a b)^0.625 / (a + b)^0.25 for the diameter of equal friction.
 *
 * @param sides - the two inner sides
 * @returns area, perimeter and diameters
 *
 * Source: Huebscher, ASHVE Trans. 54 (1948) 101-118, from memory.
 *
 * @example
 * rectangularDuctSize({ widthM: 0.25, heightM: 0.082 }).hydraulicDiameterM; // => 0.123494
 */
export function rectangularDuctSize({ widthM, heightM }: RectangularSides): DuctSize {
  requirePositive('widthM', widthM);
  requirePositive('heightM', heightM);
  const areaM2 = widthM * heightM;
  const perimeterM = 2 * (widthM + heightM);
  return {
    areaM2,
    perimeterM,
    hydraulicDiameterM: (4 * areaM2) / perimeterM,
    equalFrictionDiameterM: (1.3 * areaM2 ** 0.625) / (widthM + heightM) ** 0.25,
  };
}
