import { errorFunction } from 'simple-statistics';
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

  // simple-statistics is a general-purpose library made by others.
  it('goes back to its share by the error function of simple-statistics', () => {
    for (let percent = 1; percent < 100; percent += 1) {
      // That library's error function is good to 1.2e-7.
      const back = 0.5 * (1 + errorFunction(normalQuantile(percent / 100) / Math.SQRT2));
      expect(Math.abs(back - percent / 100)).toBeLessThan(1e-6);
    }
  });
});
