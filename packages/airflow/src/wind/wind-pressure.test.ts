import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { windPressure } from './wind-pressure.js';

test('5 m/s on a windward wall press with 10.5 Pa', () => {
  // 0.7 × 1.2 × 25 / 2
  expectNear(windPressure({ coefficient: 0.7, speedMPerS: 5, densityKgPerM3: 1.2 }), 10.5);
});

test('a face in suction has a negative pressure', () => {
  expectNear(windPressure({ coefficient: -0.3, speedMPerS: 5, densityKgPerM3: 1.2 }), -4.5);
});

test('a negative speed is refused', () => {
  expect(() => windPressure({ coefficient: 0.7, speedMPerS: -1, densityKgPerM3: 1.2 })).toThrow(
    expect.objectContaining({ argument: 'speedMPerS' }),
  );
});
