import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { lowRiseWallCoefficients, type Shelter } from './low-rise-coefficients.js';
import { shelteredWallCoefficient } from './sheltered-wall-coefficient.js';
import { wallPressureCoefficient } from './wall-pressure-coefficient.js';

test('the entries of the table are met and the middle between two is their mean', () => {
  expect(shelteredWallCoefficient({ incidenceDeg: 0, shelter: 'exposed' })).toBe(0.7);
  expectNear(shelteredWallCoefficient({ incidenceDeg: 22.5, shelter: 'exposed' }), 0.525);
  expectNear(shelteredWallCoefficient({ incidenceDeg: 135, shelter: 'half height' }), -0.35);
  expect(shelteredWallCoefficient({ incidenceDeg: 180, shelter: 'equal height' })).toBe(-0.25);
});

test('the more shelter, the smaller the difference between windward and leeward wall', () => {
  const across = (['exposed', 'half height', 'equal height'] as const).map((shelter) => {
    const [windward, , , , leeward] = lowRiseWallCoefficients.byShelter[shelter];
    return windward - leeward;
  });
  expect(across).toEqual([...across].sort((a, b) => b - a));
});

test('table and correlation tell the same story for an exposed square house', () => {
  for (const incidenceDeg of [0, 45, 90, 135, 180]) {
    expectNear(
      shelteredWallCoefficient({ incidenceDeg, shelter: 'exposed' }),
      wallPressureCoefficient({ incidenceDeg, sideRatio: 1 }),
      { absolute: 0.2, because: 'two collections of wind tunnel results of poor stated accuracy' },
    );
  }
});

test('an unknown shelter is refused', () => {
  const shelter = 'forest' as unknown as Shelter;
  expect(() => shelteredWallCoefficient({ incidenceDeg: 0, shelter })).toThrow(
    'shelter is forest; allowed is exposed, half height, equal height',
  );
});
