import { at, integer, Network } from './network';

/** Where a matrix lies in memory, in the order in which `zone-matrix.ts` writes it. */
@unmanaged
export class ZoneMatrix {
  /** Rows of the skyline, and zones that are eliminated before it. */
  size: i32;
  early: i32;
  entryCount: i32;
  /** First column kept in each row, and where column 0 of the row would be in `entries`. */
  first: usize;
  rowOffset: usize;
  entries: usize;
  diagonal: usize;
  /** The diagonal before it was factorized. */
  whole: usize;
  /** Where the columns of zones that are eliminated early begin in `entries`; bounds in `neighbour`, one more than these. */
  columns: i32;
  start: usize;
  neighbour: usize;
  pairEntry: usize;
}

/** The matrix d residual / d pressure from the slopes of the links. */
export function fill(network: Network, matrix: ZoneMatrix): void {
  const zoneCount = network.zoneCount;
  const interiorCount = network.interiorCount;
  const slope = network.slope;
  const slopeSum = network.slopeSum;
  const interiorLink = network.interiorLink;
  const interiorEntry = network.interiorEntry;
  const entries = matrix.entries;
  const diagonal = matrix.diagonal;
  const entryCount = matrix.entryCount;
  memory.copy(diagonal, slopeSum, (<usize>zoneCount) << 3);
  memory.fill(entries, 0, (<usize>entryCount) << 3);
  for (let k: usize = 0; k < <usize>interiorCount; k++) {
    const entry = at(entries, integer(interiorEntry, k));
    const link = integer(interiorLink, k);
    store<f64>(entry, load<f64>(entry) - load<f64>(at(slope, link)));
  }
}

/**
 * Overwrites the matrix by its factors LDLᵀ, the diagonal by the inverse of D.
 *
 * @returns whether every pivot was positive beyond rounding; else the matrix is singular
 */
export function factorize(matrix: ZoneMatrix): bool {
  const size = matrix.size;
  const entries = matrix.entries;
  const diagonal = matrix.diagonal;
  const whole = matrix.whole;
  memory.copy(whole, diagonal, (<usize>(size + matrix.early)) << 3);
  if (!eliminate(matrix)) return false;
  for (let row: i32 = 0; row < size; row++) {
    const begin = integer(matrix.first, row);
    const offset = at(entries, integer(matrix.rowOffset, row));
    // First the products L D, then L and what they take from the pivot.
    for (let column = begin + 1; column < row; column++) {
      const from = max(begin, integer(matrix.first, column));
      if (from === column) continue;
      const other = at(entries, integer(matrix.rowOffset, column));
      const entry = at(offset, column);
      const taken = dot(at(offset, from), at(other, from), column - from);
      store<f64>(entry, load<f64>(entry) - taken);
    }
    let pivot = load<f64>(at(diagonal, row));
    for (let column = begin; column < row; column++) {
      const entry = at(offset, column);
      const unscaled = load<f64>(entry);
      const scaled = unscaled * load<f64>(at(diagonal, column));
      store<f64>(entry, scaled);
      pivot -= unscaled * scaled;
    }
    if (!isSound(pivot, load<f64>(at(whole, row)))) return false;
    store<f64>(at(diagonal, row), 1.0 / pivot);
  }
  return true;
}

/** Eliminates the zones of few neighbours: their columns become those of L, and their neighbours neighbours. */
function eliminate(matrix: ZoneMatrix): bool {
  const entries = matrix.entries;
  const columns = at(entries, matrix.columns);
  const neighbour = matrix.neighbour;
  let pair = matrix.pairEntry;
  for (let k: i32 = 0; k < matrix.early; k++) {
    const own = at(matrix.diagonal, matrix.size + k);
    const pivot = load<f64>(own);
    if (!isSound(pivot, load<f64>(at(matrix.whole, matrix.size + k)))) return false;
    const inverse = 1.0 / pivot;
    store<f64>(own, inverse);
    const begin = integer(matrix.start, k);
    const end = integer(matrix.start, k + 1);
    for (let one = begin; one < end; one++) {
      const value = load<f64>(at(columns, one));
      const scaled = value * inverse;
      for (let other = begin; other < one; other++, pair += 4) {
        const entry = at(entries, load<i32>(pair));
        store<f64>(entry, load<f64>(entry) - scaled * load<f64>(at(columns, other)));
      }
      const theirs = at(matrix.diagonal, integer(neighbour, one));
      store<f64>(theirs, load<f64>(theirs) - scaled * value);
    }
    for (let one = begin; one < end; one++) {
      store<f64>(at(columns, one), load<f64>(at(columns, one)) * inverse);
    }
  }
  return true;
}

function isSound(pivot: f64, original: f64): bool {
  return pivot > 1e-15 * original;
}

/** Replaces the right-hand side by the solution, with the factors. */
export function solve(matrix: ZoneMatrix, vector: usize): void {
  const size = matrix.size;
  const entries = matrix.entries;
  const diagonal = matrix.diagonal;
  const columns = at(entries, matrix.columns);
  const neighbour = matrix.neighbour;
  for (let k: i32 = 0; k < matrix.early; k++) {
    const value = load<f64>(at(vector, size + k));
    const end = integer(matrix.start, k + 1);
    for (let one = integer(matrix.start, k); one < end; one++) {
      const theirs = at(vector, integer(neighbour, one));
      store<f64>(theirs, load<f64>(theirs) - load<f64>(at(columns, one)) * value);
    }
  }
  for (let row: i32 = 0; row < size; row++) {
    const begin = integer(matrix.first, row);
    if (begin === row) continue;
    const offset = at(entries, integer(matrix.rowOffset, row));
    const own = at(vector, row);
    const count = row - begin;
    store<f64>(own, load<f64>(own) - dot(at(offset, begin), at(vector, begin), count));
  }
  for (let row: i32 = 0; row < size; row++) {
    const own = at(vector, row);
    store<f64>(own, load<f64>(own) * load<f64>(at(diagonal, row)));
  }
  for (let row = size - 1; row > 0; row--) {
    const offset = at(entries, integer(matrix.rowOffset, row));
    const value = load<f64>(at(vector, row));
    for (let column = integer(matrix.first, row); column < row; column++) {
      const theirs = at(vector, column);
      store<f64>(theirs, load<f64>(theirs) - load<f64>(at(offset, column)) * value);
    }
  }
  for (let k = matrix.early - 1; k >= 0; k--) {
    const own = at(vector, size + k);
    let value = load<f64>(own) * load<f64>(at(diagonal, size + k));
    const end = integer(matrix.start, k + 1);
    for (let one = integer(matrix.start, k); one < end; one++) {
      value -= load<f64>(at(columns, one)) * load<f64>(at(vector, integer(neighbour, one)));
    }
    store<f64>(own, value);
  }
}

/** The sum of the products of two rows of numbers; two at a time where there are many. */
function dot(one: usize, other: usize, count: i32): f64 {
  const end = one + ((<usize>count) << 3);
  let sum: f64 = 0;
  if (count >= 8) {
    let even = f64x2.splat(0);
    let odd = f64x2.splat(0);
    for (; one + 32 <= end; one += 32, other += 32) {
      even = f64x2.add(even, f64x2.mul(v128.load(one), v128.load(other)));
      odd = f64x2.add(odd, f64x2.mul(v128.load(one, 16), v128.load(other, 16)));
    }
    const both = f64x2.add(even, odd);
    sum = f64x2.extract_lane(both, 0) + f64x2.extract_lane(both, 1);
  }
  for (; one < end; one += 8, other += 8) sum += load<f64>(one) * load<f64>(other);
  return sum;
}
