import { requirePositive } from '../internal/require.js';
import type { DuctSize } from './duct-size.js';

/**
 * Cross-section of a round duct.
 *
 * @param diameterM - inner diameter [m]
 * @returns area, perimeter and diameters
 *
 * @example
 * roundDuctSize(0.15).areaM2; // => 0.017671
 */
export function roundDuctSize(diameterM: number): DuctSize {
  requirePositive('diameterM', diameterM);
  return {
    areaM2: (Math.PI / 4) * diameterM * diameterM,
    perimeterM: Math.PI * diameterM,
    hydraulicDiameterM: diameterM,
    equalFrictionDiameterM: diameterM,
  };
}
