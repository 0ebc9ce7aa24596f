import { requireBetween, requirePositive } from '../internal/require.js';

/** How short a flexible duct is laid. */
export interface CompressedDuct {
  /** Inner diameter [m]. */
  readonly diameterM: number;
  /** How much shorter it lies than pulled tight, as a share of the tight length, 0 to 0.3 [-]. */
  readonly compression: number;
}

/**
 * Factor on the friction of a flexible duct that is not pulled tight [-].
 *
 * F = 1 + 0.58 c exp(-0.126 D), c the compression in percent, D the diameter in inches.
 * It is to multiply the friction of the same duct fully extended, over the length as it lies. Sags and
 * kinks come on top.
 *
 * @param duct - diameter and compression
 * @returns friction multiplier for a section of the duct law [-]
 *
 * Source: Abushakra, Walker and Sherman, HVAC&R Research 10 (2004), from memory; measured on 6, 8 and
 * 10 in. ducts up to 30 %.
 *
 * @example
 * flexibleDuctFactor({ diameterM: 0.1524, compression: 0.15 }); // => 5.085
 */
export function flexibleDuctFactor({ diameterM, compression }: CompressedDuct): number {
  requirePositive('diameterM', diameterM);
  requireBetween('compression', compression, [0, 0.3]);
  const diameterIn = diameterM / 0.0254;
  return 1 + 0.58 * (100 * compression) * Math.exp(-0.126 * diameterIn);
}
