import type { CombustionOpening } from '../screen-facts.js';

/** Share of a louvre that is free where its maker states none [-]. Source: NFPA 54-2012, 9.3.7, read. */
export const louvreFreeShare = { none: 1, 'wood louvre': 0.25, 'metal louvre': 0.75 } as const;

/**
 * Free area of an opening for combustion air [m²].
 *
 * free = the maker's free area where stated, else area × 25 % (wood) or 75 % (metal). Source: NFPA
 * 54-2012, 9.3.7, read.
 *
 * @param opening - size and cover
 * @returns the free area [m²]
 *
 * @example
 * freeAreaOf({ to: 'outdoors', areaM2: 0.04, cover: 'wood louvre' }); // => 0.01
 */
export function freeAreaOf(
  opening: Pick<CombustionOpening, 'areaM2' | 'cover' | 'freeAreaM2' | 'to'>,
): number {
  return opening.freeAreaM2 ?? opening.areaM2 * louvreFreeShare[opening.cover ?? 'none'];
}
