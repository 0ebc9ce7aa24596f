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

it('a power law of exponent ½ gives by a root what the power gives', () => {
  const x = Float64Array.from({ length: 400 }, (_, k) => (k % 2 ? 1 : -1) * 10 ** (k / 40 - 5));
  const records = new Float64Array(4 * x.length);
  const air = { densityKgPerM3: 1.1, logDensityRatio: 0.01, logViscosityRatio: 0.02 };
  const law = { kind: 'powerLaw', coefficientM3PerSPaN: 0.02, exponent: 0.5 } as const;
  x.forEach((_, k) => {
    powerLaw.prepare(law, { from: air, to: air, scale: 1, records, at: 4 * k });
  });
  const state = {
    pressureDifferencePa: x,
    massFlowKgPerS: new Float64Array(x.length),
    slopeKgPerSPa: new Float64Array(x.length),
  };
  powerLaw.block({ records, recordLength: 4, begin: 0, end: x.length }, state);
  x.forEach((value, k) => {
    const expected = Math.sign(value) * records[4 * k]! * power(Math.abs(value), 0.5);
    expect(Math.abs(state.massFlowKgPerS[k]! / expected - 1)).toBeLessThan(4e-15);
  });
});
