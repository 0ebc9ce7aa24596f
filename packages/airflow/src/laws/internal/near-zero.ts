/**
 * Flow over pressure difference of a power law within the width d near zero, over that at d [-].
 * (3 − n)/2 + (n − 1)/2 s^2 with s = dP/d.
 */
export function cubicChord(n: number, s: number): number {
  return 0.5 * (3 - n + (n - 1) * s * s);
}

/** Slope of the same curve, over the flow at d over d [-]. */
export function cubicSlope(n: number, s: number): number {
  return 0.5 * (3 - n + 3 * (n - 1) * s * s);
}
