import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { airViscosity } from './air-viscosity.js';

test.each([
  [0, 1.71608e-5],
  [20, 1.81341e-5],
  [35, 1.88431e-5],
  [200, 2.57145e-5],
])('viscosity at %s °C', (temperatureC, expected) => {
  expectNear(airViscosity(temperatureC), expected, {
    relative: 3e-6,
    because: 'the expected values, computed by hand, are printed to six digits',
  });
});

test('a temperature below absolute zero is refused', () => {
  expect(() => airViscosity(-300)).toThrow(expect.objectContaining({ code: 'airflow.argument' }));
});
