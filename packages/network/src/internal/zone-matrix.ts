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
export interface ZoneMatrix extends Skyline {
  readonly layout: ZoneLayout;
  /** Where the entries of the columns begin in `entries`, after the skyline's. */
  readonly columns: number;
  /** Two by two, the neighbours of a zone become neighbours: the entry of each such pair, zone after zone. */
  readonly pairEntry: Int32Array;
  /** The diagonal before it is factorized, against which a pivot is judged. */
  readonly whole: Float64Array;
}

/** An empty matrix. */
export function createZoneMatrix(layout: ZoneLayout, arena: Arena): ZoneMatrix {
  const { first, start, neighbour } = layout;
  const skyline = createSkyline(first, arena, {
    rows: start.length - 1,
    entries: neighbour.length,
  });
  const columns = skyline.entries.length - neighbour.length;
  let pairs = 0;
  for (let k = 0; k + 1 < start.length; k++) {
    const count = start[k + 1]! - start[k]!;
    pairs += (count * (count - 1)) / 2;
  }
  const matrix: ZoneMatrix = {
    ...skyline,
    layout,
    columns,
    pairEntry: arena.ints(pairs),
    whole: arena.floats(start.length > 1 ? skyline.diagonal.length : 0),
  };
  let pair = 0;
  for (let k = 0; k + 1 < start.length; k++) {
    for (let one = start[k]!; one < start[k + 1]!; one++) {
      for (let other = start[k]!; other < one; other++) {
        matrix.pairEntry[pair++] = entryOf(matrix, neighbour[one]!, neighbour[other]!);
      }
    }
  }
  return matrix;
}

/** An empty matrix of the same pattern. */
export function emptyLike(matrix: ZoneMatrix, arena: Arena): ZoneMatrix {
  const { entries, diagonal, whole } = matrix;
  return {
    ...matrix,
    entries: arena.floats(entries.length),
    diagonal: arena.floats(diagonal.length),
    whole: arena.floats(whole.length),
  };
}

/** Place in `entries` of two neighbouring zones. */
export function entryOf(
  { size, rowOffset, columns, layout }: ZoneMatrix,
  one: number,
  other: number,
): number {
  const high = Math.max(one, other);
  const low = Math.min(one, other);
  if (high < size) return rowOffset[high]! + low;
  // The column is that of the zone that goes first.
  const gone = low < size ? high : low;
  const stays = gone === high ? low : high;
  const { start, neighbour } = layout;
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
  const { size, diagonal, whole } = matrix;
  if (whole.length === 0) return factorizeCore(matrix);
  whole.set(diagonal);
  if (!eliminateColumns(matrix) || !factorizeCore(matrix)) return false;
  for (let row = 0; row < size; row++) if (!isSound(1 / diagonal[row]!, whole[row]!)) return false;
  return true;
}

function eliminateColumns({
  size,
  entries,
  diagonal,
  whole,
  layout,
  columns,
  pairEntry,
}: ZoneMatrix): boolean {
  const { start, neighbour } = layout;
  let pair = 0;
  for (let k = 0; k + 1 < start.length; k++) {
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
  const { size, entries, diagonal, layout, columns } = matrix;
  const { start, neighbour } = layout;
  for (let k = 0; k + 1 < start.length; k++) {
    const value = vector[size + k]!;
    for (let one = start[k]!; one < start[k + 1]!; one++) {
      const zone = neighbour[one]!;
      vector[zone] = vector[zone]! - entries[columns + one]! * value;
    }
  }
  solveCore(matrix, vector);
  for (let k = start.length - 2; k >= 0; k--) {
    let value = vector[size + k]! * diagonal[size + k]!;
    for (let one = start[k]!; one < start[k + 1]!; one++) {
      value -= entries[columns + one]! * vector[neighbour[one]!]!;
    }
    vector[size + k] = value;
  }
}
