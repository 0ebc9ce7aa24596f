import type { Arena } from './arena.js';

/**
 * A symmetric matrix whose rows are kept from their first entry to the diagonal, and its factors LDLᵀ.
 *
 * The matrices here are grounded graph Laplacians: no pivoting is needed, and fill stays within the rows.
 */
export interface Skyline {
  readonly size: number;
  /** First column kept in each row. */
  readonly first: Int32Array;
  /** Where column 0 of each row would be in `entries`; the row's first entry is at `rowOffset + first`. */
  readonly rowOffset: Int32Array;
  /** Entries left of the diagonal; the factor L after `factorize`. */
  readonly entries: Float64Array;
  /** The diagonal; the inverse of the factor D after `factorize`. */
  readonly diagonal: Float64Array;
}

/** An empty matrix for the graph given by the least neighbour of each row, with room for rows and entries of another kind. */
export function createSkyline(first: Int32Array, arena: Arena, room = noRoom): Skyline {
  const size = first.length;
  const diagonal = arena.floats(size + room.rows);
  const rowOffset = arena.ints(size);
  let length = 0;
  for (let row = 0; row < size; row++) {
    rowOffset[row] = length - first[row]!;
    length += row - first[row]!;
  }
  return {
    size,
    first,
    rowOffset,
    entries: arena.floats(length + room.entries),
    diagonal,
  };
}

const noRoom = { rows: 0, entries: 0 };

/**
 * Overwrites the matrix by its factors, the diagonal by the inverse of D.
 *
 * @returns false when a pivot is not positive beyond rounding: the matrix is singular
 */
export function factorize({ size, first, rowOffset, entries, diagonal }: Skyline): boolean {
  for (let row = 0; row < size; row++) {
    const offset = rowOffset[row]!;
    const start = first[row]!;
    // Row by row: first the products L D, two columns a turn, then L and what they take from the pivot.
    let column = start + 1;
    for (; column + 1 < row; column += 2) {
      const low = rowOffset[column]!;
      const high = rowOffset[column + 1]!;
      let sum = entries[offset + column]!;
      let next = entries[offset + column + 1]!;
      let k = Math.max(start, first[column]!);
      let h = Math.max(start, first[column + 1]!);
      // Where the rows of the two columns begin apart, one goes ahead.
      for (const both = Math.min(h, column); k < both; k++) {
        sum -= entries[offset + k]! * entries[low + k]!;
      }
      for (const both = Math.min(k, column); h < both; h++) {
        next -= entries[offset + h]! * entries[high + h]!;
      }
      for (; k < column; k++) {
        const value = entries[offset + k]!;
        sum -= value * entries[low + k]!;
        next -= value * entries[high + k]!;
      }
      entries[offset + column] = sum;
      if (h <= column) next -= sum * entries[high + column]!;
      entries[offset + column + 1] = next;
    }
    if (column < row) {
      const low = rowOffset[column]!;
      let sum = entries[offset + column]!;
      for (let k = Math.max(start, first[column]!); k < column; k++) {
        sum -= entries[offset + k]! * entries[low + k]!;
      }
      entries[offset + column] = sum;
    }
    const original = diagonal[row]!;
    let pivot = original;
    for (let column = start; column < row; column++) {
      const unscaled = entries[offset + column]!;
      const scaled = unscaled * diagonal[column]!;
      entries[offset + column] = scaled;
      pivot -= unscaled * scaled;
    }
    if (!(pivot > 1e-15 * original)) return false;
    diagonal[row] = 1 / pivot;
  }
  return true;
}

/** Replaces the right-hand side by the solution, with the factors. */
export function solveFactorized(
  { size, first, rowOffset, entries, diagonal }: Skyline,
  vector: Float64Array,
): void {
  for (let row = 0; row < size; row++) {
    const offset = rowOffset[row]!;
    let sum = vector[row]!;
    for (let k = first[row]!; k < row; k++) sum -= entries[offset + k]! * vector[k]!;
    vector[row] = sum;
  }
  for (let row = 0; row < size; row++) vector[row] = vector[row]! * diagonal[row]!;
  for (let row = size - 1; row > 0; row--) {
    const offset = rowOffset[row]!;
    const value = vector[row]!;
    for (let k = first[row]!; k < row; k++) vector[k] = vector[k]! - entries[offset + k]! * value;
  }
}
