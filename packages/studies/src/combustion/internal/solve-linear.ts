/**
 * Solves a small system of linear equations by Gauss elimination with row exchange.
 *
 * @param matrix - rows of coefficients; not changed
 * @param right - right side
 * @returns the unknowns; numbers that are not finite where the matrix is singular
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] {
  const rows = matrix.map((row, k) => [...row, right[k]!]);
  const size = rows.length;
  for (let pivot = 0; pivot < size; pivot++) {
    let best = pivot;
    for (let k = pivot + 1; k < size; k++) {
      if (Math.abs(rows[k]![pivot]!) > Math.abs(rows[best]![pivot]!)) best = k;
    }
    const top = rows[best]!;
    rows[best] = rows[pivot]!;
    rows[pivot] = top;
    for (let k = pivot + 1; k < size; k++) {
      const row = rows[k]!;
      const factor = row[pivot]! / top[pivot]!;
      if (factor === 0) continue;
      for (let column = pivot; column <= size; column++) row[column]! -= factor * top[column]!;
    }
  }
  const unknowns = new Array<number>(size).fill(0);
  for (let k = size - 1; k >= 0; k--) {
    const row = rows[k]!;
    let sum = row[size]!;
    for (let column = k + 1; column < size; column++) sum -= row[column]! * unknowns[column]!;
    unknowns[k] = sum / row[k]!;
  }
  return unknowns;
}
