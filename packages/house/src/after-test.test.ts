import { expect, test } from 'vitest';
import { afterTest } from './after-test.js';
import { remainingLeakage } from './compile/remaining-leakage.js';
import type { House } from './house.js';
import { parseHouse } from './parse-house.js';

const read = parseHouse({
  evendraft: 1,
  name: 'Synthetic, made for this project',
  floorArea: '150 m2',
  airtightness: { result: '100 L/s at 50 Pa', exponent: 0.5 },
  openings: { vent: { zone: 'house', to: 'outdoors', flow: '40 L/s at 50 Pa', exponent: 0.5 } },
});
if (!read.ok) throw new Error(JSON.stringify(read.issues));
const { house } = read;

/** What is left for the leaks [m3/(s Pa^n)]. */
const left = (of: House): number => remainingLeakage(of)[0]!.coefficientM3PerSPaN;

test('leaks stay as the test left them when what was open is taken away or made larger', () => {
  // 100 L/s less 40 L/s, at 50 Pa and an exponent of one half.
  const leaks = 0.06 / Math.sqrt(50);
  expect(left(house)).toBeCloseTo(leaks, 9);
  expect(left({ ...house, openings: [] })).toBeCloseTo(0.1 / Math.sqrt(50), 9);
  const since = afterTest(house);
  expect(left({ ...since, openings: [] })).toBeCloseTo(leaks, 9);
  const [vent] = since.openings;
  const hole = { kind: 'orifice', areaM2: 1, dischargeCoefficient: 0.6 } as const;
  expect(left({ ...since, openings: [{ ...vent!, law: hole }] })).toBeCloseTo(leaks, 9);
  expect(afterTest({ ...since, openings: [] }).airtightness).toEqual(since.airtightness);
});

test('of the tested flow, what no leak passes is what was open', () => {
  const [row] = remainingLeakage(afterTest(house));
  expect(row!.testedFlowM3PerS).toBeCloseTo(0.1, 9);
  expect(row!.modelledFlowM3PerS).toBeCloseTo(0.04, 9);
});
