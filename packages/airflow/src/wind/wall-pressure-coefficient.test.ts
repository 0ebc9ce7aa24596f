import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { wallPressureCoefficient } from './wall-pressure-coefficient.js';

const seed = 1105;

test('wind square onto a wall presses with 0.6, as the correlation is scaled', () => {
  expectNear(wallPressureCoefficient({ incidenceDeg: 0, sideRatio: 1 }), 0.6, {
    relative: 0.006,
    because: 'the logarithm of the fit is 1.006, not 1, at normal incidence',
  });
});

test('at 90° the long wall is in weaker suction than the short wall', () => {
  const long = wallPressureCoefficient({ incidenceDeg: 90, sideRatio: 2 });
  const short = wallPressureCoefficient({ incidenceDeg: 90, sideRatio: 0.5 });
  expect(long).toBeGreaterThan(short);
  expect(long).toBeLessThan(0);
});

test('every wall within the range of the fit has a finite and plausible coefficient', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 180, noNaN: true }),
      fc.double({ min: 0.25, max: 4, noNaN: true }),
      (incidenceDeg, sideRatio) => {
        const coefficient = wallPressureCoefficient({ incidenceDeg, sideRatio });
        expect(coefficient).toBeGreaterThan(-1.2);
        expect(coefficient).toBeLessThan(0.7);
      },
    ),
    { seed, numRuns: 2000 },
  );
});

test.each([
  [{ incidenceDeg: 181, sideRatio: 1 }, 'incidenceDeg'],
  [{ incidenceDeg: 0, sideRatio: 0 }, 'sideRatio'],
  [{ incidenceDeg: 0, sideRatio: 5 }, 'sideRatio'],
])('outside the range of the fit it is refused: %o', (wall, argument) => {
  expect(() => wallPressureCoefficient(wall)).toThrow(expect.objectContaining({ argument }));
});
