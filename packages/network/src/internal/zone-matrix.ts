import type { Arena } from './arena.js';
import type { Loops } from './loops.js';
import type { ZoneLayout } from './zone-layout.js';

/**
 * The matrix d residual / d pressure of a network, and its factors LDLᵀ: zones of few neighbours, which come last, are
 * eliminated first, one column of L each; what is left of the others is a skyline, whose rows are kept from their
 * first entry to the diagonal.
 *
 * In floors of rooms every second zone has few neighbours, and eliminating these halves the work; in a loose network of
 * long corridors hardly a zone is left. Small networks have a skyline only. The matrices are grounded graph Laplacians:
 * no pivoting is needed, and fill stays within the pattern.
 */
export interface ZoneMatrix {
  /** Rows of the skyline. */
  readonly size: number;
  /** First column kept in each of these rows. */
  readonly first: Int32Array;
  /** Where column 0 of each row would be in `entries`; the row's first entry is at `rowOffset + first`. */
  readonly rowOffset: Int32Array;
  /** Places of the neighbours of each eliminated zone at its turn: bounds in `neighbour`, one a zone and one more. */
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
  /** Where the entries of the columns begin in `entries`, after the skyline's. */
  readonly columns: number;
  /** Two by two, the neighbours of a zone become neighbours: the entry of each such pair, zone after zone. */
  readonly pairEntry: Int32Array;
  /** Entries off the diagonal; the factor L after `factorize`. */
  readonly entries: Float64Array;
  /** The diagonal; the inverse of the factor D after `factorize`. */
  readonly diagonal: Float64Array;
  /** The diagonal before it is factorized, against which a pivot is judged. */
  readonly whole: Float64Array;
  /** Address of what the compiled loops read of it. */
  readonly address: number;
  readonly loops: Loops;
}

/** An empty matrix. */
export function createZoneMatrix(layout: ZoneLayout, arena: Arena): ZoneMatrix {
  const size = layout.first.length;
  const early = layout.start.length - 1;
  const rowOffset = arena.ints(size);
  let columns = 0;
  for (let row = 0; row < size; row++) {
    rowOffset[row] = columns - layout.first[row]!;
    columns += row - layout.first[row]!;
  }
  let pairs = 0;
  for (let k = 0; k < early; k++) {
    const count = layout.start[k + 1]! - layout.start[k]!;
    pairs += (count * (count - 1)) / 2;
  }
  const matrix = withNumbers(
    {
      ...{ size, rowOffset, columns },
      first: copyOf(layout.first, arena),
      start: copyOf(layout.start, arena),
      neighbour: copyOf(layout.neighbour, arena),
      pairEntry: arena.ints(pairs),
    },
    arena,
  );
  const { start, neighbour, pairEntry } = matrix;
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
  return withNumbers(matrix, arena);
}

/** Bytes that both take, about. */
export function bytesOfMatrices({ first, start, neighbour }: ZoneLayout): number {
  let entries = neighbour.length;
  first.forEach((column, row) => (entries += row - column));
  return 16 * entries + 64 * (first.length + start.length + neighbour.length);
}

type Pattern = Omit<ZoneMatrix, 'entries' | 'diagonal' | 'whole' | 'address' | 'loops'>;

function withNumbers(pattern: Pattern, arena: Arena): ZoneMatrix {
  const { size, first, rowOffset, start, neighbour, columns, pairEntry } = pattern;
  const early = start.length - 1;
  const entries = arena.floats(columns + neighbour.length);
  const diagonal = arena.floats(size + early);
  const whole = arena.floats(size + early);
  const record = arena.ints(12);
  // The fields of ZoneMatrix in loops/matrix.ts, in their order.
  const arrays = [first, rowOffset, entries, diagonal, whole].map((array) => array.byteOffset);
  record.set([size, early, entries.length, ...arrays, columns]);
  record.set([start.byteOffset, neighbour.byteOffset, pairEntry.byteOffset], 9);
  const { loops } = arena;
  return {
    size,
    first,
    rowOffset,
    start,
    neighbour,
    columns,
    pairEntry,
    entries,
    diagonal,
    whole,
    address: record.byteOffset,
    loops,
  };
}

function copyOf(values: Int32Array, arena: Arena): Int32Array {
  const copy = arena.ints(values.length);
  copy.set(values);
  return copy;
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
export function factorize({ loops, address }: ZoneMatrix): boolean {
  return loops.factorize(address) !== 0;
}

/** Replaces the right-hand side, given by its address in the memory of the matrix, by the solution, with the factors. */
export function solveFactorized({ loops, address }: ZoneMatrix, vector: number): void {
  loops.solve(address, vector);
}
