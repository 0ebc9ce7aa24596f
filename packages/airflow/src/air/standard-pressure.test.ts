import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { standardPressure } from './standard-pressure.js';

test('sea level has exactly the standard pressure', () => {
  expect(standardPressure(0)).toBe(101325);
});

test.each([
  [500, 95460.8],
  [1500, 84555.9],
])('pressure at %s m', (altitudeM, expected) => {
  expectNear(standardPressure(altitudeM), expected, {
    absolute: 0.05,
    because: 'the expected values, computed by hand, are printed to 0.1 Pa',
  });
});

test.each([-501, 11001, Number.NaN])('an altitude of %s m is refused', (altitudeM) => {
  expect(() => standardPressure(altitudeM)).toThrow(
    expect.objectContaining({ argument: 'altitudeM', allowed: '-500 to 11000' }),
  );
});
