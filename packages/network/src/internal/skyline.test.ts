import { expect, it } from 'vitest';
import { createSkyline, factorize, solveFactorized } from './skyline.js';
import { zoneGraph, zoneOrder } from './zone-order.js';

it('solves a grounded Laplacian of a grid as the product says', () => {
  const [across, size] = [6, 60];
  const first = Int32Array.from({ length: size }, (_, row) => Math.max(0, row - across));
  const matrix = createSkyline(first);
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

it('says when a matrix is singular', () => {
  const matrix = createSkyline(Int32Array.of(0, 0));
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
