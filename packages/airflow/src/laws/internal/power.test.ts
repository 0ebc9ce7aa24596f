import { expect, it } from 'vitest';
import { powerLaw } from '../power-law.js';
import { power } from './power.js';

/** Greatest relative difference to Math.pow, itself within about 1e-15, on a grid of x and n. */
function worstError(decades: number, mostExponent: number): number {
  let worst = 0;
  for (let i = 0; i < 40_000; i++) {
    const x = 10 ** (decades * (((i * 7919) % 40_000) / 20_000 - 1));
    const n = 0.5 + ((mostExponent - 0.5) * ((i * 104_729) % 40_000)) / 40_000;
    worst = Math.max(worst, Math.abs(power(x, n) / x ** n - 1));
  }
  return worst;
}

it('agrees with Math.pow to 3e-15 over the pressures and exponents of buildings', () => {
  expect(worstError(6, 1)).toBeLessThan(3e-15);
});

it('agrees with Math.pow to 1e-13 over all sizes whose power is a double', () => {
  expect(worstError(12, 2)).toBeLessThan(2e-14);
  expect(worstError(300, 1)).toBeLessThan(1e-13);
});

it('never falls by more than its rounding as x grows', () => {
  for (const n of [0.5, 0.65, 1, 2]) {
    let before = 0;
    for (let x = 0.9; x < 1.1; x += 1e-5) {
      const now = power(x, n);
      expect(now).toBeGreaterThan(before);
      before = now;
    }
  }
});

it('gives exact powers of two where they are', () => {
  expect(power(4, 0.5)).toBeCloseTo(2, 15);
  expect(power(1, 0.7)).toBeCloseTo(1, 15);
  expect(power(1e-300, 0.5) / 1e-150).toBeCloseTo(1, 13);
  expect(power(1e300, 0.5) / 1e150).toBeCloseTo(1, 13);
});

it('a power law gives the same flow in the loop of its exponent and in the loop of all exponents', () => {
  const x = Float64Array.from({ length: 400 }, (_, k) => (k % 2 ? 1 : -1) * 10 ** (k / 40 - 7));
  for (const exponent of [0.5, 0.573, 0.65, 0.9, 1]) {
    const flows = [exponent, 0].map((recordClass) => {
      const law = { kind: 'powerLaw', coefficientM3PerSPaN: 0.02, exponent } as const;
      const records = new Float64Array(4 * x.length);
      const [from, to] = [1.1, 1.3].map((density) => ({
        densityKgPerM3: density,
        logDensityRatio: 0.01,
        logViscosityRatio: 0.02,
      }));
      x.forEach((_, k) => {
        powerLaw.prepare(law, { from: from!, to: to!, scale: 1, records, at: 4 * k });
      });
      const state = {
        pressureDifferencePa: x,
        massFlowKgPerS: new Float64Array(x.length),
        slopeKgPerSPa: new Float64Array(x.length),
      };
      powerLaw.block({ records, recordLength: 4, recordClass, begin: 0, end: x.length }, state);
      return state;
    });
    const [own, general] = flows;
    x.forEach((_, k) => {
      expect(Math.abs(own!.massFlowKgPerS[k]! / general!.massFlowKgPerS[k]! - 1)).toBeLessThan(
        4e-15,
      );
      expect(Math.abs(own!.slopeKgPerSPa[k]! / general!.slopeKgPerSPa[k]! - 1)).toBeLessThan(4e-15);
    });
  }
});
