import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundTicks, straightScale, stretchedScale, stretchedTicks } from './scale.js';

describe('straightScale', () => {
  it('maps both ends and the middle, in either direction', () => {
    const down = straightScale([0, -20], [10, 110]);
    expect([down(0), down(-10), down(-20)]).toEqual([10, 60, 110]);
  });

  it('puts everything in the middle where there is only one value', () => {
    expect(straightScale([3, 3], [0, 100])(3)).toBe(50);
  });
});

describe('stretchedScale', () => {
  it('goes with the square root of the size, on both sides of zero', () => {
    const down = stretchedScale([0, -100], [0, 100]);
    expect([down(0), down(-25), down(-100)]).toEqual([0, 50, 100]);
    const both = stretchedScale([-4, 4], [0, 80]);
    expect([both(-4), both(-1), both(0), both(1)]).toEqual([0, 20, 40, 60]);
  });
});

describe('roundTicks', () => {
  it('covers the range in steps of 1, 2 or 5', () => {
    expect(roundTicks([-13, 0], 4)).toEqual([-15, -10, -5, 0]);
    expect(roundTicks([0, 0.9], 5)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
    expect(roundTicks([0, 871], 4)).toEqual([0, 500, 1000]);
  });

  it('covers any range with a few even steps', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        fc.integer({ min: 2, max: 8 }),
        (from, span, about) => {
          const ticks = roundTicks([from, from + span], about);
          const step = (ticks[1] ?? 0) - (ticks[0] ?? 0);
          // Ticks are printed with 12 digits; the range may begin a rounding error before the first.
          const slack = 1e-6 * step + 1e-9 * Math.abs(from);
          expect(ticks[0]).toBeLessThanOrEqual(from + slack);
          expect(ticks.at(-1)).toBeGreaterThanOrEqual(from + span - slack);
          expect(ticks.length).toBeLessThanOrEqual(about + 3);
          expect(step).toBeGreaterThan(0);
        },
      ),
      { seed: 7303, numRuns: 300 },
    );
  });
});

describe('stretchedTicks', () => {
  it('gives 1, 2 and 5 of every power of ten within the range', () => {
    expect(stretchedTicks([-130, 3])).toEqual([-100, -50, -20, -10, -5, -2, -1, 0, 1, 2]);
  });
});
