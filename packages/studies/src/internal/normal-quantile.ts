/**
 * The value below which a share of the standard normal distribution lies [-].
 *
 * Rational approximation, relative error below 1.15e-9. Source: P. J. Acklam, An algorithm for computing the
 * inverse normal cumulative distribution function, from memory.
 *
 * @param share - between 0 and 1, both excluded [-]
 * @returns the quantile [-]
 */
export function normalQuantile(share: number): number {
  if (share > 0.5) return -normalQuantile(1 - share);
  if (share < 0.02425) {
    const q = Math.sqrt(-2 * Math.log(share));
    return polynomial(tail, q) / (polynomial(tailBelow, q) * q + 1);
  }
  const q = share - 0.5;
  const r = q * q;
  return (polynomial(middle, r) * q) / (polynomial(middleBelow, r) * r + 1);
}

/** Coefficients, highest power first. */
const middle = [
  -3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2,
  -3.066479806614716e1, 2.506628277459239,
];
const middleBelow = [
  -5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1,
  -1.328068155288572e1,
];
const tail = [
  -7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734,
  4.374664141464968, 2.938163982698783,
];
const tailBelow = [
  7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416,
];

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);
}
