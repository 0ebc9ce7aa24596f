import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { exact, nearestDouble } from './exact.js';

describe('nearestDouble', () => {
  it('agrees with the decimal reader of the language, which rounds correctly', () => {
    const text = fc
      .tuple(fc.bigInt({ min: -(10n ** 40n), max: 10n ** 40n }), fc.integer({ min: 0, max: 60 }))
      .map(([digits, places]) => [digits, places] as const);
    fc.assert(
      fc.property(text, ([digits, places]) => {
        const value = exact(`${digits}/1`).div(exact(`1${'0'.repeat(places)}`));
        expect(nearestDouble(value)).toBe(Number(`${digits}e-${places}`) + 0);
      }),
      { seed: 20260402, numRuns: 1000 },
    );
  });

  it('rounds a tie to even', () => {
    expect(nearestDouble(exact('9007199254740993'))).toBe(9007199254740992);
    expect(nearestDouble(exact('9007199254740995'))).toBe(9007199254740996);
  });
});
