import { requirePositive } from '../internal/require.js';

/** Diameters of round duct that are commonly sold, 3 to 24 in. [m]. Common practice, no source. */
export const standardRoundSizes: readonly number[] = Object.freeze(
  [3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24].map((diameterIn) => diameterIn * 0.0254),
);

/**
 * The next commonly sold round duct that is no narrower than a diameter [m].
 *
 * @param diameterM - least inner diameter [m]
 * @returns diameter of the next size up; undefined above the largest [m]
 *
 * Source: common practice, no source.
 *
 * @example
 * nextStandardRoundSize(0.16); // => 0.1778
 */
export function nextStandardRoundSize(diameterM: number): number | undefined {
  requirePositive('diameterM', diameterM);
  // A diameter that comes out of a computation may lie a rounding above the size that it means.
  return standardRoundSizes.find((size) => size >= diameterM * (1 - 1e-9));
}
