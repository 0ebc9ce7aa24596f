import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { lowRiseCoefficient } from './low-rise-coefficient.js';
import { lowRiseSurfaces, type LowRiseSurface, type Shelter } from './low-rise-surfaces.js';
import { wallPressureCoefficient } from './wall-pressure-coefficient.js';

const surfaces = Object.keys(lowRiseSurfaces) as LowRiseSurface[];
const shelters = ['exposed', 'half height', 'equal height'] as const;
const wall = { surface: 'square-plan wall' } as const;

test('the entries of the table are met and the middle between two is their mean', () => {
  expect(lowRiseCoefficient({ ...wall, incidenceDeg: 0, shelter: 'exposed' })).toBe(0.7);
  expectNear(lowRiseCoefficient({ ...wall, incidenceDeg: 22.5, shelter: 'exposed' }), 0.525);
  expectNear(lowRiseCoefficient({ ...wall, incidenceDeg: 135, shelter: 'half height' }), -0.35);
  expect(lowRiseCoefficient({ ...wall, incidenceDeg: 180, shelter: 'equal height' })).toBe(-0.25);
  expect(lowRiseCoefficient({ surface: 'short wall', incidenceDeg: 90, shelter: 'exposed' })).toBe(
    -0.9,
  );
});

test.each(surfaces)(
  '%s: every coefficient is between -1 and 1 and shelter never strengthens the wind',
  (surface) => {
    const { byShelter, status } = lowRiseSurfaces[surface];
    expect(status).toBe('memory');
    const greatest = shelters.map((shelter) => Math.max(...byShelter[shelter].map(Math.abs)));
    expect(greatest).toEqual([...greatest].sort((a, b) => b - a));
    expect(greatest[0]).toBeLessThan(1);
  },
);

test.each(['square-plan wall', 'long wall', 'short wall'] as const)(
  '%s: the more shelter, the smaller the difference between windward and leeward side',
  (surface) => {
    const across = shelters.map((shelter) => {
      const [windward, , , , leeward] = lowRiseSurfaces[surface].byShelter[shelter];
      return windward - leeward;
    });
    expect(across).toEqual([...across].sort((a, b) => b - a));
  },
);

test('table and correlation tell the same story for an exposed square house', () => {
  for (const incidenceDeg of [0, 45, 90, 135, 180]) {
    expectNear(
      lowRiseCoefficient({ ...wall, incidenceDeg, shelter: 'exposed' }),
      wallPressureCoefficient({ incidenceDeg, sideRatio: 1 }),
      { absolute: 0.2, because: 'two collections of wind tunnel results of poor stated accuracy' },
    );
  }
});

test('an unknown shelter and an unknown surface are refused with the names that are known', () => {
  const shelter = 'forest' as unknown as Shelter;
  expect(() => lowRiseCoefficient({ ...wall, incidenceDeg: 0, shelter })).toThrow(
    'shelter is forest; allowed is exposed, half height, equal height',
  );
  const surface = 'dome' as unknown as LowRiseSurface;
  expect(() => lowRiseCoefficient({ surface, incidenceDeg: 0, shelter: 'exposed' })).toThrow(
    'surface is dome; allowed is square-plan wall',
  );
});

test('between its entries a coefficient stays between its neighbours and does not jump', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...surfaces),
      fc.constantFrom(...shelters),
      fc.double({ min: 0, max: 180, noNaN: true }),
      (surface, shelter, incidenceDeg) => {
        const entries = lowRiseSurfaces[surface].byShelter[shelter];
        const at = (degrees: number): number =>
          lowRiseCoefficient({ surface, shelter, incidenceDeg: Math.min(180, degrees) });
        expect(at(incidenceDeg)).toBeGreaterThanOrEqual(Math.min(...entries) - 1e-12);
        expect(at(incidenceDeg)).toBeLessThanOrEqual(Math.max(...entries) + 1e-12);
        // The steepest stretch of any row falls by 1.1 in 45°.
        expect(Math.abs(at(incidenceDeg + 0.01) - at(incidenceDeg))).toBeLessThan(0.01 * 0.025);
      },
    ),
    { seed: 1128 },
  );
});
