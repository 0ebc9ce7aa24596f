/** A mean and how it grows when both ends rise together. */
export interface RootMean {
  value: number;
  slope: number;
}

/**
 * Mean of sqrt(max(0, u)) over u from `low` to `high`, and its slope when both rise together.
 *
 * Below a width d the root is replaced by the odd cubic of equal value and slope at d that the power laws use. No
 * two numbers of almost equal size are subtracted: a² + ab + b² over a + b with a, b the roots of the ends is the
 * mean of the root times 3/2, and ends that coincide give the root itself.
 *
 * @param low - lesser end [Pa]
 * @param high - greater end, above 0 [Pa]
 * @param width - d; 0 leaves the root as it is, and then the ends must not both be 0 [Pa]
 * @param into - written and returned
 */
// eslint-disable-next-line max-params -- called for both streams of every doorway without allocating
export function rootMean(low: number, high: number, width: number, into: RootMean): RootMean {
  const start = Math.max(low, width);
  const length = high - low;
  let value = 0;
  let slope = 0;
  if (high >= width) {
    const a = Math.sqrt(start);
    const b = Math.sqrt(high);
    const share = length > 0 ? (high - start) / length : 1;
    value = (share * (2 / 3) * (a * a + a * b + b * b)) / (a + b);
    slope = share / (a + b);
  }
  const floor = Math.max(low, 0);
  if (floor < width) {
    // With s = u/d: sqrt(d)/4 (5 s − s³) and its derivative, averaged over s from `from` to `to`.
    const from = floor / width;
    const to = Math.min(high, width) / width;
    const share = length > 0 ? (Math.min(high, width) - floor) / length : 1;
    const squares = from * from + to * to;
    const root = Math.sqrt(width);
    value += share * (root / 8) * (from + to) * (5 - squares / 2);
    slope += (share * (5 - squares - from * to)) / (4 * root);
  }
  into.value = value;
  into.slope = slope;
  return into;
}
