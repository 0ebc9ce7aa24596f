import type { Arena } from './arena.js';
import type { Skyline } from './skyline.js';
import {
  createSkyline,
  factorize as factorizeCore,
  solveFactorized as solveCore,
} from './skyline.js';
import type { ZoneLayout } from './zone-layout.js';

/**
 * The matrix d residual / d pressure of a network, and its factors LDLᵀ: zones of few neighbours, which come last, are
 * eliminated first, one column of L each; what is left of the others is a skyline.
 *
 * In floors of rooms every second zone has few neighbours, and eliminating these halves the work; in a loose network of
 * long corridors hardly a zone is left. Small networks have a skyline only.
 */
export interface ZoneMatrix extends Skyline, Columns {
  /** The diagonal before it is factorized, against which a pivot is judged; empty where nothing is eliminated. */
  readonly whole: Float64Array;
}

/** The zones that are eliminated, after those of the skyline. */
interface Columns {
  readonly early: number;
  /** Places of the neighbours of each at its turn: bounds in `neighbour`, one a zone and one more. */
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
  /** Where the entries of the columns begin in `entries`, after the skyline's. */
  readonly columns: number;
  /** Two by two, the neighbours of a zone become neighbours: the entry of each such pair, zone after zone. */
  readonly pairEntry: Int32Array;
}

/** An empty matrix. */
export function createZoneMatrix(layout: ZoneLayout, arena: Arena): ZoneMatrix {
  const { first, start, neighbour } = layout;
  const early = start.length - 1;
  const skyline = createSkyline(first, arena, { rows: early, entries: neighbour.length });
  const columns = skyline.entries.length - neighbour.length;
  let pairs = 0;
  for (let k = 0; k < early; k++) {
    const count = start[k + 1]! - start[k]!;
    pairs += (count * (count - 1)) / 2;
  }
  const pairEntry = arena.ints(pairs);
  const matrix = matrixOf(skyline, { early, start, neighbour, columns, pairEntry }, arena);
  let pair = 0;
  for (let k = 0; k < early; k++) {
    for (let one = start[k]!; one < start[k + 1]!; one++) {
      for (let other = start[k]!; other < one; other++) {
        pairEntry[pair++] = entryOf(matrix, neighbour[one]!, neighbour[other]!);
      }
    }
  }
  return matrix;
}

/** An empty matrix of the same pattern. */
export function emptyLike(matrix: ZoneMatrix, arena: Arena): ZoneMatrix {
  const entries = arena.floats(matrix.entries.length);
  const diagonal = arena.floats(matrix.diagonal.length);
  return matrixOf({ ...matrix, entries, diagonal }, matrix, arena);
}

/** All matrices are made here, so that they have one form and the loops are compiled for it alone. */
function matrixOf(
  { size, first, rowOffset, entries, diagonal }: Skyline,
  { early, start, neighbour, columns, pairEntry }: Columns,
  arena: Arena,
): ZoneMatrix {
  const whole = arena.floats(early > 0 ? diagonal.length : 0);
  return {
    size,
    first,
    rowOffset,
    entries,
    diagonal,
    early,
    start,
    neighbour,
    columns,
    pairEntry,
    whole,
  };
}

/** Place in `entries` of two neighbouring zones. */
export function entryOf(
  { size, rowOffset, columns, start, neighbour }: ZoneMatrix,
  one: number,
  other: number,
): number {
  const high = Math.max(one, other);
  const low = Math.min(one, other);
  if (high < size) return rowOffset[high]! + low;
  // The column is that of the zone that goes first.
  const gone = low < size ? high : low;
  const stays = gone === high ? low : high;
  for (let k = start[gone - size]!; k < start[gone - size + 1]!; k++) {
    if (neighbour[k] === stays) return columns + k;
  }
  throw new RangeError(`zones ${one} and ${other} are no neighbours`);
}

/**
 * Overwrites the matrix by its factors, the diagonal by the inverse of D.
 *
 * @returns false when a pivot is not positive beyond rounding: the matrix is singular
 */
export function factorize(matrix: ZoneMatrix): boolean {
  if (matrix.early === 0) return factorizeCore(matrix);
  const { size, diagonal, whole } = matrix;
  whole.set(diagonal);
  if (!eliminateColumns(matrix) || !factorizeCore(matrix)) return false;
  for (let row = 0; row < size; row++) if (!isSound(1 / diagonal[row]!, whole[row]!)) return false;
  return true;
}

function eliminateColumns(matrix: ZoneMatrix): boolean {
  const { size, entries, diagonal, whole } = matrix;
  const { early, start, neighbour, columns, pairEntry } = matrix;
  let pair = 0;
  for (let k = 0; k < early; k++) {
    const pivot = diagonal[size + k]!;
    if (!isSound(pivot, whole[size + k]!)) return false;
    const inverse = 1 / pivot;
    diagonal[size + k] = inverse;
    const begin = start[k]!;
    const end = start[k + 1]!;
    for (let one = begin; one < end; one++) {
      const value = entries[columns + one]!;
      const scaled = value * inverse;
      for (let other = begin; other < one; other++) {
        const at = pairEntry[pair++]!;
        entries[at] = entries[at]! - scaled * entries[columns + other]!;
      }
      const zone = neighbour[one]!;
      diagonal[zone] = diagonal[zone]! - scaled * value;
    }
    for (let one = begin; one < end; one++)
      entries[columns + one] = entries[columns + one]! * inverse;
  }
  return true;
}

function isSound(pivot: number, original: number): boolean {
  return pivot > 1e-15 * original;
}

/** Replaces the right-hand side by the solution, with the factors. */
export function solveFactorized(matrix: ZoneMatrix, vector: Float64Array): void {
  if (matrix.early === 0) {
    solveCore(matrix, vector);
    return;
  }
  const { size, entries, diagonal, early, start, neighbour, columns } = matrix;
  for (let k = 0; k < early; k++) {
    const value = vector[size + k]!;
    for (let one = start[k]!; one < start[k + 1]!; one++) {
      const zone = neighbour[one]!;
      vector[zone] = vector[zone]! - entries[columns + one]! * value;
    }
  }
  solveCore(matrix, vector);
  for (let k = early - 1; k >= 0; k--) {
    let value = vector[size + k]! * diagonal[size + k]!;
    for (let one = start[k]!; one < start[k + 1]!; one++) {
      value -= entries[columns + one]! * vector[neighbour[one]!]!;
    }
    vector[size + k] = value;
  }
}
