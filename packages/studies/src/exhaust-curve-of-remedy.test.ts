import { compileHouse, type House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import {
  constantFlow,
  device,
  inventedHouse,
  passBetween,
  weather,
} from '../test-data/invented-house.js';
import { balanceStudy } from './balance-study.js';
import { exhaustCurveOfRemedy } from './exhaust-curve-of-remedy.js';
import { questionOf } from './question-of.js';
import { speedCap } from './sized/house-remedies.js';
import { motorizedMakeUp, passiveOpening, poweredMakeUp } from './sized/make-up-remedies.js';
import type { Situation } from './state-balance.js';

const house: House = inventedHouse({
  devices: [device('hood', { low: constantFlow(0.1), high: constantFlow(0.2) }, { zone: 'hall' })],
  openings: [passBetween()],
  weathers: [weather('only', 20)],
});
const situation: Situation = {
  label: 'nothing',
  state: { running: {}, doors: {} },
  weather: 'only',
  airtightness: house.airtightness.cases[0]!.name,
};
const curve = async (remedy: Parameters<typeof exhaustCurveOfRemedy>[0], size: number) => {
  const found = await exhaustCurveOfRemedy(remedy, { size, device: 'hood', situation });
  return found!;
};

describe('the exhaust curve of a remedy', () => {
  it('lies higher at every flow with a larger opening, and begins where the house stands still', async () => {
    const opening = passiveOpening(house, { zone: 'hall' });
    const [small, large] = [await curve(opening, 0.01), await curve(opening, 0.05)];
    expect(small.points[0]!.pressurePa).toBeCloseTo(0, 6);
    for (const [index, { pressurePa }] of small.points.entries()) {
      if (index > 0) expect(large.points[index]!.pressurePa).toBeGreaterThan(pressurePa);
    }
  });

  it('holds a fan that follows the device to its flow in proportion', async () => {
    // A supply of the whole exhaust leaves no suction at any flow; half of it leaves that of half the exhaust.
    const none = passiveOpening(house, { zone: 'hall' });
    const without = await curve(none, 1e-12);
    const powered = poweredMakeUp(house, { zone: 'hall', follows: 'hood', shortfall: 0 });
    const [whole, half] = [await curve(powered, 0.2), await curve(powered, 0.1)];
    for (const { pressurePa } of whole.points) expect(pressurePa).toBeCloseTo(0, 6);
    expect(half.points[16]!.pressurePa).toBeCloseTo(without.points[8]!.pressurePa, 6);
    expect(half.points[8]!.pressurePa).toBeCloseTo(without.points[4]!.pressurePa, 6);
  });

  it('works at the points that the house with the remedy is solved for, its damper open', async () => {
    const run = { lengthM: 3, elbows: 2 };
    const remedy = motorizedMakeUp(house, { zone: 'hall', run, opensWith: { driver: 'hood' } });
    const found = await curve(remedy, 0.2);
    const result = compileHouse(remedy.houseWith(0.2));
    if (!result.ok) throw new Error('the house compiles');
    const { state, ...rest } = questionOf(result.compiled, situation);
    const high = balanceStudy(result.compiled, {
      ...rest,
      state: { ...state, running: { hood: 'high' } },
    });
    if (high.status !== 'solved') throw new Error('the house is solved');
    expect(high.makeUp[0]!.damper).toBe('open');
    expect(found.operatingPoints.map(({ speed }) => speed)).toEqual(['low', 'high']);
    expect(found.operatingPoints[1]!.pressurePa).toBeCloseTo(
      high.zones.find(({ zone }) => zone === 'hall')!.pressurePa,
      9,
    );
  });

  it('ends at the cap of a speed', async () => {
    const found = await curve(speedCap(house, 'hood'), 0.75);
    expect(found.points.at(-1)!.exhaustFlowM3PerS).toBeCloseTo(0.15, 9);
  });

  it('has no answer for a device that the house does not have', async () => {
    const remedy = passiveOpening(house, { zone: 'hall' });
    expect(
      await exhaustCurveOfRemedy(remedy, { size: 0.01, device: 'none', situation }),
    ).toBeUndefined();
  });
});
