import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { inOneMemory } from './arena.js';
import { zoneLayout } from './zone-layout.js';
import type { ZoneMatrix } from './zone-matrix.js';
import { createZoneMatrix, entryOf, factorize, solveFactorized } from './zone-matrix.js';

/** Made-up graphs: ends of links, zone numbers from `zones` on being boundaries. */
const graphs = {
  'two floors of 6 by 7 rooms': floors(2, 6, 7),
  'four floors of 5 by 5 rooms': floors(4, 5, 5),
  'a corridor with rooms and closets on it': {
    zones: 90,
    from: Array.from({ length: 89 }, (_, k) => k + 1),
    to: Array.from({ length: 89 }, (_, k) => (k % 3 === 0 ? Math.max(0, k - 2) : k - (k % 3) + 1)),
  },
  'a hall with 80 rooms, each two links': {
    zones: 81,
    from: Array.from({ length: 160 }, () => 80),
    to: Array.from({ length: 160 }, (_, k) => k >> 1),
  },
  'zones with no neighbour, and links to boundaries': {
    zones: 70,
    from: Array.from({ length: 70 }, (_, k) => k),
    to: Array.from({ length: 70 }, (_, k) => (k % 2 === 0 ? 70 + (k % 3) : k - 1)),
  },
  'a loose random net': {
    zones: 120,
    from: Array.from({ length: 260 }, (_, k) => number(k, 120)),
    to: Array.from({ length: 260 }, (_, k) => (number(k, 120) + 1 + number(k + 500, 119)) % 120),
  },
};

describe.each(Object.entries(graphs))('%s', (_, { zones, from, to }) => {
  // ml-matrix is a general-purpose library for dense matrices, made by others.
  it('is solved as the Cholesky factors of ml-matrix solve it', () => {
    const { matrix, dense } = conductances({ zones, from, to, ground: 0.01 });
    expect(matrix.size).toBeLessThan(zones);
    const right = Float64Array.from({ length: zones }, (__, k) => Math.sin(k));
    const expected = new CholeskyDecomposition(dense).solve(Matrix.columnVector(right));
    expect(factorize(matrix)).toBe(true);
    const largest = Math.max(...expected.to1DArray().map(Math.abs));
    solved(matrix, right).forEach((value, k) => {
      expect(Math.abs(value - expected.get(k, 0))).toBeLessThan(1e-9 * largest);
    });
  });
});

it.each(['alone', 'in a pair'])(
  'a zone %s that nothing ties to the rest makes it singular',
  (how) => {
    const { zones, from, to } = floors(2, 6, 7);
    const pair = how === 'in a pair';
    const loose = {
      zones: zones + 2,
      from: [...from, 0, pair ? zones : 1],
      to: [...to, zones + 2, zones + 1],
    };
    const { matrix } = conductances({ ...loose, ground: 0 });
    expect(factorize(matrix)).toBe(false);
  },
);

it('keeps a small network as one skyline', () => {
  const { matrix } = conductances({ ...floors(1, 5, 6), ground: 0.1 });
  expect(matrix.size).toBe(30);
});

it('solves a grounded Laplacian of a grid as the product says', () => {
  const [across, size] = [6, 60];
  const first = Int32Array.from({ length: size }, (_, row) => Math.max(0, row - across));
  const matrix = skyline(first);
  const entry = (row: number, column: number): number =>
    row - column === across || (row - column === 1 && row % across !== 0) ? -(1 + (row % 3)) : 0;
  const dense = Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (__, column) =>
      row === column ? 0.1 : entry(Math.max(row, column), Math.min(row, column)),
    ),
  );
  dense.forEach((row, i) => {
    row[i] = 0.1 * (i % 7) + 0.01 - row.reduce((sum, value, k) => sum + (k === i ? 0 : value), 0);
  });
  for (let row = 0; row < size; row++) {
    matrix.diagonal[row] = dense[row]![row]!;
    for (let column = first[row]!; column < row; column++) {
      matrix.entries[matrix.rowOffset[row]! + column] = dense[row]![column]!;
    }
  }
  const expected = Float64Array.from({ length: size }, (_, k) => Math.sin(k));
  const vector = Float64Array.from(dense, (row) =>
    row.reduce((sum, value, k) => sum + value * expected[k]!, 0),
  );
  expect(factorize(matrix)).toBe(true);
  solved(matrix, vector).forEach((value, k) => {
    expect(Math.abs(value - expected[k]!)).toBeLessThan(1e-10);
  });
});

it('solves random networks of conductances as the Cholesky factors of ml-matrix do', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const size = 2 + 3 * seed;
    const dense = Matrix.zeros(size, size);
    const random = (k: number): number => 0.5 + 0.5 * Math.sin(12.9898 * seed + 78.233 * k);
    for (let link = 0; link < 3 * size; link++) {
      const [one, other] = [Math.floor(random(3 * link) * size), (link * 7) % size];
      // Four decades of conductances, as between a crack and a doorway.
      const conductance = 10 ** (4 * random(3 * link + 1) - 2);
      dense.set(one, one, dense.get(one, one) + conductance);
      if (one === other) continue;
      dense.set(other, other, dense.get(other, other) + conductance);
      dense.set(one, other, dense.get(one, other) - conductance);
      dense.set(other, one, dense.get(other, one) - conductance);
    }
    const matrix = skyline(new Int32Array(size));
    for (let row = 0; row < size; row++) {
      dense.set(row, row, dense.get(row, row) + 0.01);
      matrix.diagonal[row] = dense.get(row, row);
      for (let column = 0; column < row; column++) {
        matrix.entries[matrix.rowOffset[row]! + column] = dense.get(row, column);
      }
    }
    const right = Float64Array.from({ length: size }, (_, k) => random(1000 + k) - 0.5);
    const expected = new CholeskyDecomposition(dense).solve(Matrix.columnVector(right));
    expect(factorize(matrix)).toBe(true);
    const largest = Math.max(...expected.to1DArray().map(Math.abs));
    solved(matrix, right).forEach((value, k) => {
      expect(Math.abs(value - expected.get(k, 0))).toBeLessThan(1e-9 * largest);
    });
  }
});

it('says when a matrix is singular', () => {
  const matrix = skyline(Int32Array.of(0, 0));
  matrix.diagonal.set([1, 1]);
  matrix.entries.set([-1]);
  expect(factorize(matrix)).toBe(false);
});

/** A matrix of one skyline, from the first column of each row. */
function skyline(first: Int32Array): ZoneMatrix {
  const layout = { place: first, first, start: new Int32Array(1), neighbour: new Int32Array(0) };
  return inOneMemory(0, (arena) => createZoneMatrix(layout, arena));
}

/** The solution for a right-hand side, which has to lie in the matrix's own memory. */
function solved(matrix: ZoneMatrix, right: Float64Array): Float64Array {
  // `whole` is read by `factorize` only.
  matrix.whole.set(right);
  solveFactorized(matrix, matrix.whole.byteOffset);
  return matrix.whole;
}

function floors(high: number, across: number, deep: number) {
  const zones = high * across * deep;
  const from: number[] = [];
  const to: number[] = [];
  for (let zone = 0; zone < zones; zone++) {
    const room = zone % (across * deep);
    const others = [
      room % across < across - 1 ? zone + 1 : zones,
      room < across * (deep - 1) ? zone + across : zones,
      zone + across * deep,
    ];
    for (const other of others) {
      if (other >= zones) continue;
      from.push(zone);
      to.push(other);
    }
  }
  return { zones, from, to };
}

function number(k: number, below: number): number {
  return Math.floor((0.5 + 0.5 * Math.sin(12.9898 + 78.233 * k)) * below) % below;
}

interface Graph {
  readonly zones: number;
  readonly from: readonly number[];
  readonly to: readonly number[];
}

/** Conductances over four decades, and one to the ground at every zone, in both forms, by place. */
function conductances({ zones, from, to, ground }: Graph & { readonly ground: number }) {
  const layout = zoneLayout(zones, Int32Array.from(from), Int32Array.from(to));
  expect([...layout.place].sort((a, b) => a - b)).toEqual(
    Array.from({ length: zones }, (_, k) => k),
  );
  const matrix = inOneMemory(0, (arena) => createZoneMatrix(layout, arena));
  const dense = Matrix.zeros(zones, zones);
  const add = (row: number, column: number, value: number): void => {
    dense.set(row, column, dense.get(row, column) + value);
    if (row === column) matrix.diagonal[row]! += value;
    else if (row < column) matrix.entries[entryOf(matrix, row, column)]! += value;
  };
  for (let zone = 0; zone < zones; zone++) add(zone, zone, ground);
  from.forEach((start, link) => {
    const conductance = 10 ** (4 * (0.5 + 0.5 * Math.sin(link)) - 2);
    const one = layout.place[start] ?? -1;
    const other = layout.place[to[link]!] ?? -1;
    if (one >= 0) add(one, one, conductance);
    if (other >= 0) add(other, other, conductance);
    if (one < 0 || other < 0) return;
    add(one, other, -conductance);
    add(other, one, -conductance);
  });
  return { matrix, dense };
}
