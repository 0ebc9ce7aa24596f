/**
 * Rank correlation of two lists of equal length (Spearman): the correlation of their ranks [-].
 *
 * Ranks of equal values are averaged. Source: C. Spearman, 1904, from memory.
 *
 * @param one - values
 * @param other - values
 * @returns from −1 to 1; 0 where either list does not vary
 */
export function rankCorrelation(one: Float64Array, other: Float64Array): number {
  return correlationOfRanks(ranksOf(one), ranksOf(other));
}

/**
 * Correlation of ranks, where the caller has them already [-].
 *
 * @param a - ranks, as `ranksOf` gives them
 * @param b - ranks
 * @returns from −1 to 1; 0 where either list does not vary
 */
export function correlationOfRanks(a: Float64Array, b: Float64Array): number {
  const mean = (a.length - 1) / 2;
  let [ab, aa, bb] = [0, 0, 0];
  for (let index = 0; index < a.length; index += 1) {
    const x = a[index]! - mean;
    const y = b[index]! - mean;
    ab += x * y;
    aa += x * x;
    bb += y * y;
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}

/**
 * Ranks of values, those of equal values averaged [-].
 *
 * @param values - values
 * @returns from 0, in the order of the values
 */
export function ranksOf(values: Float64Array): Float64Array {
  const order = Uint32Array.from(values.keys()).sort((i, j) => values[i]! - values[j]!);
  const rank = new Float64Array(values.length);
  for (let first = 0; first < order.length;) {
    let end = first + 1;
    while (end < order.length && values[order[end]!] === values[order[first]!]) end += 1;
    for (let place = first; place < end; place += 1) rank[order[place]!] = (first + end - 1) / 2;
    first = end;
  }
  return rank;
}
