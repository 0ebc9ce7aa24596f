import { requireBetween } from '../internal/require.js';

/** Free share and loss coefficient, in rising order of the share. */
const points: readonly (readonly [freeShare: number, lossCoefficient: number])[] = [
  [0.3, 6.2],
  [0.4, 3],
  [0.5, 1.7],
  [0.6, 0.97],
  [0.7, 0.58],
  [0.8, 0.32],
  [0.9, 0.14],
  [1, 0],
];

/**
 * Loss coefficient of a wire screen across a duct, by the duct's velocity pressure [-].
 *
 * A table by the free share of the area, straight between its rows. A screen blocked by lint has the
 * share that is left open.
 *
 * @param freeShare - open area by the duct's area, 0.3 to 1 [-]
 * @returns loss coefficient [-]
 *
 * Source: SMACNA HVAC Systems Duct Design, screen in a duct, from memory.
 *
 * @example
 * screenLossCoefficient(0.5); // => 1.7
 */
export function screenLossCoefficient(freeShare: number): number {
  requireBetween('freeShare', freeShare, [0.3, 1]);
  const above = points.findIndex(([share]) => share >= freeShare);
  const [share, lossCoefficient] = points[above]!;
  const [shareBelow, lossBelow] = points[Math.max(0, above - 1)]!;
  if (share === shareBelow) return lossCoefficient;
  const part = (freeShare - shareBelow) / (share - shareBelow);
  return lossBelow + part * (lossCoefficient - lossBelow);
}
