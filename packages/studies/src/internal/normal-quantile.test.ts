import { describe, expect, it } from 'vitest';
import { normalQuantile } from './normal-quantile.js';

describe('the normal quantile', () => {
  it.each([
    // Tables of the standard normal distribution, to six digits.
    [0.5, 0],
    [0.975, 1.959964],
    [0.95, 1.644854],
    [0.01, -2.326348],
    [0.001, -3.090232],
    [0.9999, 3.719016],
  ])('is that of the tables at %f', (share, value) => {
    // As many digits as the tables give.
    expect(Math.abs(normalQuantile(share) - value)).toBeLessThan(1e-6);
  });
});
