import { describe, expect, it } from 'vitest';
import { circulation } from './max-flow.js';

const anything = { least: -Infinity, most: Infinity };

describe('a circulation within bounds', () => {
  it('exists where a forced flow can return', () => {
    const arcs = [
      { from: 0, to: 1, least: 2, most: 2 },
      { from: 1, to: 0, least: 0, most: Infinity },
    ];
    expect(circulation(2, arcs).feasible).toBe(true);
  });

  it('finds its way through a middle node and against an arc that carries enough', () => {
    const arcs = [
      { from: 0, to: 1, least: 3, most: 3 },
      { from: 1, to: 2, least: 0, most: 2 },
      { from: 1, to: 2, least: 0, most: 1 },
      { from: 0, to: 2, ...anything },
    ];
    expect(circulation(3, arcs).feasible).toBe(true);
  });

  it('names the side of the cut that lacks air, and the side that has too much', () => {
    const arcs = [
      { from: 1, to: 0, least: 2, most: 2 },
      { from: 0, to: 2, least: 1, most: 1 },
      { from: 1, to: 2, least: 0, most: 0.5 },
    ];
    const { feasible, surplus, deficit } = circulation(3, arcs);
    expect(feasible).toBe(false);
    expect([...deficit]).toContain(1);
    expect([...surplus]).toContain(2);
    expect(deficit.has(2)).toBe(false);
  });

  it('does not take rounding for a lack', () => {
    const arcs = [
      { from: 0, to: 1, least: 0.1, most: 0.1 },
      { from: 0, to: 1, least: 0.2, most: 0.2 },
      { from: 1, to: 0, least: 0.3, most: 0.3 },
    ];
    expect(circulation(2, arcs).feasible).toBe(true);
  });
});
