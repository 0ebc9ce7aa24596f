import { flowAt, type FlowLawDescription } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import { parseHouse } from '../parse-house.js';

function house(more: object) {
  const result = parseHouse({
    evendraft: 1,
    name: 'Synthetic, made for this project',
    floorArea: '150 m2',
    airtightness: '100 L/s at 50 Pa',
    ...more,
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

/** Flow of the fan against a pressure rise, in reference air [L/s]. */
function flow(law: FlowLawDescription, risePa: number): number {
  return (1000 * flowAt(law, -risePa).massFlowKgPerS) / 1.2041;
}

// (1 − 2.25577e-5 · 2500)^5.2559, the standard atmosphere by hand.
const ratio = 0.73706;
const hood = { flow: '200 L/s', ratingPressure: '60 Pa', shutOffPressure: '200 Pa' };

test('a fan in the mountains moves the same volume at pressures that fall with the density', () => {
  const [low] = house({ exhaust: { hood } }).devices;
  const [high] = house({ altitude: '2500 m', exhaust: { hood } }).devices;
  const [atSea, above] = [low!.speeds[0]!.law, high!.speeds[0]!.law];
  expect(flow(above, 0)).toBeCloseTo(flow(atSea, 0), 6);
  expect(flow(above, 0.74 * 200)).toBe(0);
  expect(flow(atSea, 0.74 * 200)).toBeGreaterThan(90);
  // Q = 200 sqrt(1 − s/(ratio · 200)); the points of the curve lie within 0.5 % of the free flow.
  expect(Math.abs(flow(above, 100) - 200 * Math.sqrt(1 - 100 / (ratio * 200)))).toBeLessThan(1);
});

test('a curve of the file and a supply fan are taken as rated in standard air too', () => {
  const curve = [
    ['0 L/s', '200 Pa'],
    ['200 L/s', '0 Pa'],
  ];
  const { devices } = house({
    altitude: '2500 m',
    exhaust: { hood: { curve } },
    supply: { 'make-up fan': hood },
  });
  const [exhaust, supply] = devices;
  expect(flow(exhaust!.speeds[0]!.law, ratio * 100)).toBeCloseTo(100, 1);
  expect(flow(supply!.speeds[0]!.law, 0.74 * 200)).toBe(0);
});

test('a booster fan behind a duct weakens with the air', () => {
  const boosted = {
    flow: '200 L/s',
    duct: { diameter: '200 mm', length: '5 m' },
    boosterFan: { flow: '200 L/s', ratingPressure: '60 Pa', shutOffPressure: '200 Pa' },
  };
  const [device] = house({ altitude: '2500 m', exhaust: { hood: boosted } }).devices;
  const booster = device!.path!.after.find(({ name }) => name === 'booster fan')!.law;
  expect(flow(booster, 0.73 * 200)).toBeGreaterThan(1);
  // Beyond its shut-off it is blown backwards.
  expect(flow(booster, 0.745 * 200)).toBeLessThan(-1);
});

test('the range of a constant-flow control is what the file says', () => {
  const constant = { flow: '200 L/s', constantFlow: { upTo: '150 Pa' } };
  const [device] = house({ altitude: '2500 m', exhaust: { hood: constant } }).devices;
  expect(flow(device!.speeds[0]!.law, 149)).toBeCloseTo(200, 6);
});

test('what is taken of the air is listed above sea level only', () => {
  const noted = (altitude: string): boolean =>
    house({ altitude, exhaust: { hood } }).assumptions.some(({ what }) =>
      what.startsWith('air of its fan'),
    );
  expect(noted('1600 m')).toBe(true);
  expect(noted('0 m')).toBe(false);
});
