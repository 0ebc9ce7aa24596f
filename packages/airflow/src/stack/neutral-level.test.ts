import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { neutralLevel } from './neutral-level.js';
import { stackPressure } from './stack-pressure.js';

const seed = 1102;

test('a climb to the neutral level brings the pressure to zero', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -60, max: 60, noNaN: true }),
      fc.double({ min: 1, max: 1.25, noNaN: true }),
      fc.double({ min: 1.26, max: 1.5, noNaN: true }),
      (pressurePa, zoneDensityKgPerM3, outdoorDensityKgPerM3) => {
        const densities = { zoneDensityKgPerM3, outdoorDensityKgPerM3 };
        const heightM = neutralLevel({ pressurePa, ...densities });
        const gained = stackPressure({ ...densities, heightM: heightM ?? Number.NaN });
        expectNear(pressurePa + gained, 0, { absolute: 1e-9 });
      },
    ),
    { seed },
  );
});

test('a heated house that is depressurized at the floor has its neutral level above the floor', () => {
  const heated = { zoneDensityKgPerM3: 1.2, outdoorDensityKgPerM3: 1.34 };
  expect(neutralLevel({ pressurePa: -2, ...heated })).toBeGreaterThan(0);
  expect(neutralLevel({ pressurePa: 0, ...heated })).toBe(0);
});

test('air of equal density has no neutral level', () => {
  const equal = { zoneDensityKgPerM3: 1.2, outdoorDensityKgPerM3: 1.2 };
  expect(neutralLevel({ pressurePa: -2, ...equal })).toBeUndefined();
});
