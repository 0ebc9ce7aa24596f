import { describe, expect, test } from 'vitest';
import { airAt } from '../air/air-at.js';
import { expectNear } from '../../testing/expect-near.js';
import { doorway } from './doorway.js';
import { exchangeCoefficient } from './exchange-coefficient.js';
import type { DoorwayDescription } from './flow-law-description.js';
import { flowAt } from './flow-laws.js';
import { inletAir } from './inlet-air.js';

const door: DoorwayDescription = {
  kind: 'doorway',
  widthM: 0.9,
  heightM: 2,
  dischargeCoefficient: 0.6,
};
const dry = (temperatureC: number) => airAt({ temperatureC, pressurePa: 101325 });
const cool = dry(18);
const warm = dry(20);

describe('rooms of 18 and 20 °C, numbers derived by a separate program', () => {
  const sillPa = 0.0810214;
  test('no net mass flows at 0.0810214 Pa, and 0.159382 kg/s flow each way', () => {
    const net = flowAt(door, sillPa, { from: cool, to: warm }).massFlowKgPerS;
    expectNear(net, 0, { absolute: 2e-7, because: 'the pressure is printed to 1e-7 Pa' });
    const air = { from: inletAir(cool), to: inletAir(warm) };
    const { forwardKgPerS, backwardKgPerS } = doorway.streams!(door, sillPa, air);
    const printed = { absolute: 5e-7, because: 'printed to 1e-6 kg/s' };
    expectNear(forwardKgPerS, 0.159382, printed);
    expectNear(backwardKgPerS, 0.159382, printed);
  });

  test('the same door seen from the other side carries the same air the other way', () => {
    const there = flowAt(door, 0.03, { from: cool, to: warm });
    const back = flowAt(door, -0.03, { from: warm, to: cool });
    expect(back.massFlowKgPerS).toBe(-there.massFlowKgPerS);
    expect(back.slopeKgPerSPa).toBe(there.slopeKgPerSPa);
  });
});

test.each([
  [1, 0.09312, 0.06278],
  [2, 0.13169, 0.08977],
  [5, 0.20822, 0.14662],
])('pure exchange at %d K is Cd W/3 sqrt(g H^3 dT/T)', (differenceK, atSixTenths, atExchange) => {
  // The closed form takes one density for both streams, which differ by up to 1.7 %.
  const from = dry(20 - differenceK / 2);
  const to = dry(20 + differenceK / 2);
  const sillPa = ((from.densityKgPerM3 - to.densityKgPerM3) * 9.80665 * 2) / 2;
  const air = { from: inletAir(from), to: inletAir(to) };
  const exchange = (dischargeCoefficient: number): number => {
    const { forwardKgPerS, backwardKgPerS } = doorway.streams!(
      { ...door, dischargeCoefficient },
      sillPa,
      air,
    );
    const inM3 = forwardKgPerS / from.densityKgPerM3;
    return (inM3 + backwardKgPerS / to.densityKgPerM3) / 2;
  };
  const because = 'printed to 1e-5 m3/s; the closed form neglects the square of dT/T, below 1e-4';
  expectNear(exchange(0.6), atSixTenths, { relative: 1.5e-4, because });
  expectNear(exchange(exchangeCoefficient(differenceK)), atExchange, { relative: 1.5e-4, because });
});

test('air of one density sees the orifice of the whole area, at every pressure difference', () => {
  const orifice = { kind: 'orifice', areaM2: 1.8, dischargeCoefficient: 0.6 } as const;
  for (const x of [-40, -1e-3, -1e-6, -3e-7, 0, 1e-9, 9e-7, 1e-6, 2e-6, 5]) {
    const [wide, sharp] = [flowAt(door, x), flowAt(orifice, x)];
    expectNear(wide.massFlowKgPerS, sharp.massFlowKgPerS, { relative: 1e-14 });
    expectNear(wide.slopeKgPerSPa, sharp.slopeKgPerSPa, { relative: 1e-14 });
  }
});

test('where the neutral level is above the head all air goes one way', () => {
  const { forwardKgPerS, backwardKgPerS } = doorway.streams!(door, 1, {
    from: inletAir(cool),
    to: inletAir(warm),
  });
  expect(backwardKgPerS).toBe(0);
  expectNear(forwardKgPerS, flowAt(door, 1, { from: cool, to: warm }).massFlowKgPerS);
});

test('a door of no width, of no height or without a coefficient is refused', () => {
  const fields = doorway
    .check({ kind: 'doorway', widthM: 0, heightM: -1, dischargeCoefficient: NaN })
    .map(({ field }) => field);
  expect(fields).toEqual(['widthM', 'heightM', 'dischargeCoefficient']);
});
