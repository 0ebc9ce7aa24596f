import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { expect, it } from 'vitest';
import { createArena } from './arena.js';
import { createSkyline, factorize, solveFactorized } from './skyline.js';
import { zoneGraph, zoneOrder } from './zone-order.js';

it('solves a grounded Laplacian of a grid as the product says', () => {
  const [across, size] = [6, 60];
  const first = Int32Array.from({ length: size }, (_, row) => Math.max(0, row - across));
  const matrix = createSkyline(first, createArena(size));
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
  solveFactorized(matrix, vector);
  vector.forEach((value, k) => {
    expect(Math.abs(value - expected[k]!)).toBeLessThan(1e-10);
  });
});

// ml-matrix is a general-purpose library for dense matrices, made by others.
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
    const matrix = createSkyline(new Int32Array(size), createArena(size * size));
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
    solveFactorized(matrix, right);
    const largest = Math.max(...expected.to1DArray().map(Math.abs));
    right.forEach((value, k) => {
      expect(Math.abs(value - expected.get(k, 0))).toBeLessThan(1e-9 * largest);
    });
  }
});

it('says when a matrix is singular', () => {
  const matrix = createSkyline(Int32Array.of(0, 0), createArena(2));
  matrix.diagonal.set([1, 1]);
  matrix.entries.set([-1]);
  expect(factorize(matrix)).toBe(false);
});

it('orders a chain so that neighbours stay neighbours, and every component is there', () => {
  const chain = [3, 0, 4, 1, 2];
  // One link twice, and one to a boundary.
  const from = Int32Array.of(3, 0, 4, 1, 1, 5);
  const to = Int32Array.of(0, 4, 1, 2, 2, 6);
  const order = zoneOrder(zoneGraph(6, from, to));
  expect([...order].sort()).toEqual([0, 1, 2, 3, 4, 5]);
  const places = chain.map((zone) => order.indexOf(zone));
  for (let k = 1; k < places.length; k++) {
    expect(Math.abs(places[k]! - places[k - 1]!)).toBe(1);
  }
});

it('gives a hub of many neighbours the middle of a star of chains, each neighbour once', () => {
  const rays = 100;
  const from = Int32Array.from({ length: 2 * rays }, (_, k) => (k < rays ? 0 : k - rays + 1));
  const to = Int32Array.from({ length: 2 * rays }, (_, k) => k + 1);
  const order = zoneOrder(zoneGraph(2 * rays + 1, from, to));
  expect(new Set(order).size).toBe(2 * rays + 1);
});
