import { describe, expect, it } from 'vitest';
import {
  constantFlow,
  device,
  hole,
  inventedHouse,
  leak,
  makeUp,
  weather,
} from '../test-data/invented-house.js';
import { closedDamperLeakage } from './closed-damper-leakage.js';
import { failureStudy } from './failure-study.js';
import { failureCases } from './failures/failure-cases.js';
import { barometricMakeUp, motorizedMakeUp } from './sized/make-up-remedies.js';

const house = inventedHouse(
  {
    devices: [
      device('hood', { on: constantFlow(0.2) }, { zone: 'hall' }),
      device(
        'supply',
        { on: constantFlow(0.1) },
        {
          zone: 'hall',
          direction: 'supply',
          kind: 'supply fan',
          interlock: { driver: 'hood' },
        },
      ),
    ],
    makeUpOpenings: [makeUp('inlet', 'hood', { openLaw: hole(0.02), closedLaw: leak(1e-4) })],
    weathers: [weather('still', 20)],
  },
  ['hall'],
);

describe('what if it fails', () => {
  it('is deeper with a damper stuck shut, a clogged filter or a failed fan, and as deep with one stuck open', async () => {
    const cases = failureCases(house);
    const results = await failureStudy([
      { item: 'nothing', failure: 'fan failed', house },
      ...cases,
    ]);
    const lowest = Object.fromEntries(
      results.map(({ item, failure, zones }) => [
        `${item}: ${failure}`,
        zones[0]!.lowest.pressurePa,
      ]),
    );
    const sound = lowest['nothing: fan failed']!;
    expect(lowest['inlet: damper stuck shut']!).toBeLessThan(sound - 1);
    expect(lowest['inlet: filter clogged']!).toBeLessThan(sound - 1);
    expect(lowest['supply: fan failed']!).toBeLessThan(sound - 1);
    expect(lowest['supply: filter clogged']!).toBeLessThan(sound - 1);
    // The hood opens the damper in the worst state, so that one stuck open changes nothing there.
    expect(lowest['inlet: damper stuck open']).toBeCloseTo(sound, 6);
    expect(lowest['inlet: gasket leaking']).toBeCloseTo(sound, 6);
    expect(lowest['inlet: damper stuck shut']!).toBeLessThan(lowest['inlet: filter clogged']!);
  });
});

describe('what if a damper fails that stood shut, unsealed, while the house was tested', () => {
  it('leaves the leaks as they were tested: stuck open it is as deep with the hood, and airs the house without', async () => {
    const inlet = house.makeUpOpenings[0]!;
    const tested: typeof house = {
      ...house,
      makeUpOpenings: [{ ...inlet, duringTest: 'closed' }],
      weathers: [weather('cold', -10)],
    };
    const [sound, stuckOpen] = await failureStudy([
      { item: 'nothing', failure: 'fan failed', house: tested },
      ...failureCases(tested).filter(({ failure }) => failure === 'damper stuck open'),
    ]);
    expect(stuckOpen!.zones[0]!.lowest.pressurePa).toBeCloseTo(
      sound!.zones[0]!.lowest.pressurePa,
      6,
    );
    expect(stuckOpen!.infiltration!.massFlowKgPerS).toBeGreaterThan(
      1.01 * sound!.infiltration!.massFlowKgPerS,
    );
  });
});

describe('what if the make-up duct of a remedy fails', () => {
  const bare = { ...house, makeUpOpenings: [] };
  const duct = { zone: 'hall', run: { lengthM: 3, elbows: 2 } };
  const flap = barometricMakeUp(bare, { ...duct, opensAtPa: 2 }).houseWith(0.2);
  const motor = motorizedMakeUp(bare, { ...duct, opensWith: { driver: 'hood' } }).houseWith(0.2);

  it('lets a flap stick and leak, and a duct clog, as it does a motorized damper', async () => {
    for (const [damped, item] of [
      [flap, 'barometric make-up'],
      [motor, 'motorized make-up'],
    ] as const) {
      const cold = { ...damped, weathers: [weather('cold', -10)] };
      const results = await failureStudy([
        { item, failure: 'fan failed', house: cold },
        ...failureCases(cold).filter((each) => each.item === item),
      ]);
      expect(results.map(({ failure }) => failure).slice(1)).toEqual([
        'damper stuck shut',
        'damper stuck open',
        'gasket leaking',
        'filter clogged',
      ]);
      const [sound, shut, open, gasket, filter] = results.map(({ zones, infiltration }) => ({
        lowestPa: zones[0]!.lowest.pressurePa,
        enters: infiltration!.massFlowKgPerS,
      }));
      expect(shut!.lowestPa).toBeLessThan(sound!.lowestPa - 1);
      expect(filter!.lowestPa).toBeLessThan(sound!.lowestPa - 0.1);
      expect(open!.lowestPa).toBeGreaterThanOrEqual(sound!.lowestPa - 1e-6);
      // With everything off a damper that stays open lets air in, and so does a worn gasket.
      expect(open!.enters).toBeGreaterThan(1.01 * sound!.enters);
      expect(gasket!.enters).toBeGreaterThan(sound!.enters);
      expect(gasket!.enters).toBeLessThan(open!.enters);
    }
  });

  it('adds to a blower-door test what its class allows, worked by hand', () => {
    const [row] = closedDamperLeakage(motor);
    const areaM2 = Math.PI * 0.1 ** 2;
    expect(row!.item).toBe('motorized make-up');
    expect(row!.areaM2).toBeCloseTo(areaM2, 12);
    const second = row!.byClass.find(({ leakageClass }) => leakageClass === 'EN 1751 class 2')!;
    // 0.04 m³/s for each m² at 100 Pa, so 0.04 A / √2 at 50 Pa; the duct takes next to nothing of it.
    const flow = (0.04 * areaM2) / Math.SQRT2;
    expect(second.flowAt50PaM3PerS / flow).toBeGreaterThan(0.999);
    expect(second.flowAt50PaM3PerS / flow).toBeLessThanOrEqual(1 + 1e-9);
    expect(second.shareOfTested / (second.flowAt50PaM3PerS / 0.2)).toBeCloseTo(1, 9);
    expect(row!.stated).toEqual({
      flowAt50PaM3PerS: second.flowAt50PaM3PerS,
      shareOfTested: second.shareOfTested,
    });
    expect(closedDamperLeakage(flap)[0]).toMatchObject({ item: 'barometric make-up' });
    expect(closedDamperLeakage(bare)).toEqual([]);
  });
});
