import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { frictionFactor } from './friction-factor.js';

test('the turbulent factor solves the formula of Colebrook to rounding', () => {
  fc.assert(
    fc.property(
      fc.double({ min: Math.log(4000), max: Math.log(1e9), noNaN: true }),
      fc.double({ min: 0, max: 0.3, noNaN: true }),
      (logReynolds, roughness) => {
        const reynolds = Math.exp(logReynolds);
        const root = 1 / Math.sqrt(frictionFactor(reynolds, roughness));
        expectNear(-2 * Math.log10(roughness / 3.7 + (2.51 * root) / reynolds), root, {
          relative: 1e-14,
        });
      },
    ),
    { seed: 1125, numRuns: 1000 },
  );
});

test('the smooth factor is solved to rounding at every size of Reynolds number', () => {
  for (let reynolds = 4000; reynolds < 1e9; reynolds *= 1.7) {
    const root = 1 / Math.sqrt(frictionFactor(reynolds, 0));
    expectNear(-2 * Math.log10((2.51 * root) / reynolds), root, { relative: 1e-14 });
  }
});

test('laminar flow knows no roughness', () => {
  expectNear(frictionFactor(1600, 0.05), 0.04);
  expectNear(frictionFactor(1600, 0), 0.04);
});

test.each([0, 1e-4, 0.01, 0.05, 0.3])(
  'between laminar and turbulent the loss rises all the way, roughness %d',
  (roughness) => {
    const loss = (reynolds: number): number => frictionFactor(reynolds, roughness) * reynolds ** 2;
    for (let reynolds = 1990; reynolds < 4010; reynolds += 1) {
      expect(loss(reynolds + 1)).toBeGreaterThan(loss(reynolds));
    }
  },
);

test('refuses what is no flow or no wall', () => {
  expect(() => frictionFactor(0, 0)).toThrow('reynolds');
  expect(() => frictionFactor(1e5, -1)).toThrow('relativeRoughness');
});
