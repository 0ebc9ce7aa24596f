import type { FlowLawDescription } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import { seriesFlow } from './series-flow.js';

const orifice: FlowLawDescription = { kind: 'orifice', areaM2: 0.01, dischargeCoefficient: 0.6 };
const flap: FlowLawDescription = {
  kind: 'oneWayDamper',
  coefficientM3PerSPaN: 0.01,
  exponent: 0.5,
  crackingPressurePa: 5,
};
/** Cd A sqrt(2 rho dP), at reference air. */
const orificeFlow = (areaM2: number, pa: number) => 0.6 * areaM2 * Math.sqrt(2 * 1.2041 * pa);

test('two equal orifices in series share the pressure equally', () => {
  const flow = seriesFlow([{ law: orifice }, { law: orifice }], 50);
  expect(flow).toBeCloseTo(orificeFlow(0.01, 25), 12);
  expect(seriesFlow([{ law: orifice }, { law: orifice }], -50)).toBeCloseTo(-flow, 12);
});

test('unequal orifices in series carry what their areas give: 1/A² = 1/A1² + 1/A2²', () => {
  const small: FlowLawDescription = { ...orifice, areaM2: 0.004 };
  const areaM2 = (0.01 ** -2 + 0.004 ** -2) ** -0.5;
  const flow = seriesFlow([{ law: orifice }, { law: small }], 50);
  expect(flow).toBeCloseTo(orificeFlow(areaM2, 50), 12);
});

test('a flap takes its cracking pressure off what the rest sees', () => {
  const flow = seriesFlow([{ law: flap }, { law: orifice }], 30);
  // m = 0.01 rho sqrt(x - 5) = 0.6 A sqrt(2 rho (30 - x)): both are k_i sqrt of their share of 25 Pa.
  const k1 = 0.01 * 1.2041;
  const k2 = orificeFlow(0.01, 1);
  expect(flow).toBeCloseTo(k1 * k2 * Math.sqrt(25 / (k1 ** 2 + k2 ** 2)), 10);
});

test('a flap that stays shut, or is blown shut, carries nothing', () => {
  expect(seriesFlow([{ law: flap }, { law: orifice }], 4)).toBeCloseTo(0, 12);
  expect(seriesFlow([{ law: flap }, { law: orifice }], -30)).toBeCloseTo(0, 12);
  expect(seriesFlow([{ law: flap, reversed: true }, { law: orifice }], -30)).toBeLessThan(-0.01);
  expect(seriesFlow([{ law: flap }, { law: flap }], 8)).toBeCloseTo(0, 12);
});

test('nothing flows without a pressure difference or without a part', () => {
  expect(seriesFlow([{ law: orifice }], 0)).toBe(0);
  expect(seriesFlow([], 50)).toBe(0);
});
