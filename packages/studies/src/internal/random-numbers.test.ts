import { describe, expect, it } from 'vitest';
import { randomNumbers } from './random-numbers.js';

describe('random numbers', () => {
  it('repeats with its seed and differs with another', () => {
    const take = (seed: number) => Array.from({ length: 5 }, randomNumbers(seed).uniform);
    expect(take(7)).toEqual(take(7));
    expect(take(7)).not.toEqual(take(8));
  });

  it('spreads evenly: moments, bins and neighbours', () => {
    const { uniform } = randomNumbers(20240229);
    const count = 100_000;
    const drawn = Array.from({ length: count }, uniform);
    const mean = drawn.reduce((sum, x) => sum + x, 0) / count;
    const variance = drawn.reduce((sum, x) => sum + (x - mean) ** 2, 0) / count;
    const pairs = drawn.slice(1).reduce((sum, x, i) => sum + (x - 0.5) * (drawn[i]! - 0.5), 0);
    // Tolerances are five standard errors of a fair generator.
    expect(Math.abs(mean - 0.5)).toBeLessThan(5 * Math.sqrt(1 / 12 / count));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(5 * Math.sqrt(1 / 180 / count));
    expect(Math.abs(pairs / count)).toBeLessThan((5 * (1 / 12)) / Math.sqrt(count));
    const bins = new Array<number>(100).fill(0);
    for (const x of drawn) bins[Math.floor(100 * x)]! += 1;
    const square = bins.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0);
    // The 99.99 % point of chi square with 99 degrees of freedom is about 161.
    expect(square).toBeLessThan(161);
    expect(Math.min(...drawn)).toBeGreaterThan(0);
    expect(Math.max(...drawn)).toBeLessThan(1);
  });
});
