import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { exchangeCoefficient } from './exchange-coefficient.js';

test('a door between rooms 5 K apart has 0.4225, whichever is the warmer', () => {
  expectNear(exchangeCoefficient(5), 0.4225);
  expectNear(exchangeCoefficient(-5), 0.4225);
});

test('rooms of one temperature have 0.40', () => {
  expect(exchangeCoefficient(0)).toBe(0.4);
});

test('a difference that is no number is refused', () => {
  expect(() => exchangeCoefficient(NaN)).toThrow(
    expect.objectContaining({ argument: 'temperatureDifferenceK' }),
  );
});
