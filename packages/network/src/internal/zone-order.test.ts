import { expect, it } from 'vitest';
import { zoneGraph, zoneOrder } from './zone-order.js';

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
