/** Halvings: a bracket of 1e5 ends below 1e-10. */
const halvings = 50;

/**
 * The root of a rising function by halving its bracket.
 *
 * @param value - a function that does not fall
 * @param bracket - low and high end; the low end is returned where the function is positive there already, the
 * high end where it stays negative
 * @returns the root, in the unit of the bracket
 */
export function rootBetween(
  value: (at: number) => number,
  bracket: readonly [number, number],
): number {
  let [low, high] = bracket;
  if (value(low) >= 0) return low;
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (value(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}
