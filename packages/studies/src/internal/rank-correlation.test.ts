import { sampleRankCorrelation } from 'simple-statistics';
import { expect, it } from 'vitest';
import { randomNumbers } from './random-numbers.js';
import { rankCorrelation } from './rank-correlation.js';

// simple-statistics is a general-purpose library made by others.
it('is the rank correlation of simple-statistics where no values tie', () => {
  for (let seed = 1; seed <= 20; seed += 1) {
    const random = randomNumbers(seed);
    const one = Float64Array.from({ length: 10 + seed }, () => random.uniform());
    const other = one.map((value) => value + seed * 0.1 * random.uniform());
    const expected = sampleRankCorrelation([...one], [...other]);
    expect(Math.abs(rankCorrelation(one, other) - expected)).toBeLessThan(1e-12);
  }
});

it('averages the ranks of equal values, and is nothing where a list does not vary', () => {
  // Ranks 0.5, 0.5, 2 against 0, 1, 2: worked by hand, 1.5 / sqrt(1.5 * 2).
  const found = rankCorrelation(Float64Array.of(3, 3, 7), Float64Array.of(1, 2, 9));
  expect(Math.abs(found - Math.sqrt(0.75))).toBeLessThan(1e-12);
  expect(rankCorrelation(Float64Array.of(1, 1), Float64Array.of(1, 2))).toBe(0);
});
