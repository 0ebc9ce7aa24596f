import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { checkFlowLaw, flowAt } from '../laws/flow-laws.js';
import { constantFlowFan } from './constant-flow-fan.js';
import { fanBySimilarity, fanPowerBySimilarity } from './fan-by-similarity.js';
import { fanRise } from './fan-rise.js';
import { offFanLaw } from './off-fan-law.js';
import { operatingPoints } from './operating-points.js';
import { typicalFanCurve } from './typical-fan-curve.js';

const straight = [
  { pressureRisePa: 100, volumeFlowM3PerS: 0 },
  { pressureRisePa: 0, volumeFlowM3PerS: 0.2 },
];
const stalling = [
  { pressureRisePa: 100, volumeFlowM3PerS: 0 },
  { pressureRisePa: 60, volumeFlowM3PerS: 0.05 },
  { pressureRisePa: 110, volumeFlowM3PerS: 0.12 },
  { pressureRisePa: 0, volumeFlowM3PerS: 0.2 },
];

describe('fan laws', () => {
  it('at another speed a fan meets a system without a fixed part on the same shape of point', () => {
    // Loss 2500 Q^2 against 100 - 500 Q: Q = (-500 + sqrt(500^2 + 4 2500 100))/(2 2500) = 0.123607.
    const systemLossPa = (flow: number): number => 2500 * flow * flow;
    const flowAtSpeed = (speedRatio: number): number =>
      operatingPoints({ points: fanBySimilarity(straight, { speedRatio }), systemLossPa })[0]!
        .volumeFlowM3PerS;
    expectNear(flowAtSpeed(1), 0.1 * (Math.sqrt(5) - 1));
    expectNear(flowAtSpeed(0.6), 0.06 * (Math.sqrt(5) - 1));
  });

  it('changes one after the other are one change', () => {
    const ratio = fc.double({ min: 0.3, max: 3, noNaN: true });
    fc.assert(
      fc.property(ratio, ratio, ratio, (speedRatio, diameterRatio, densityRatio) => {
        const atOnce = { speedRatio, diameterRatio, densityRatio };
        const steps = [{ speedRatio }, { diameterRatio }, { densityRatio }];
        const [a] = fanBySimilarity(straight, atOnce);
        const [b] = steps.reduce<readonly (typeof straight)[0][]>(
          (points, step) => fanBySimilarity(points, step),
          straight,
        );
        expectNear(a!.pressureRisePa, b!.pressureRisePa);
        expectNear(
          fanPowerBySimilarity(90, atOnce),
          steps.reduce((power, step) => fanPowerBySimilarity(power, step), 90),
        );
      }),
      { seed: 1125 },
    );
  });

  it('power goes as rise times flow', () => {
    const change = { speedRatio: 0.7, diameterRatio: 1.2, densityRatio: 0.8 };
    const [, free] = fanBySimilarity(straight, change);
    const [shut] = fanBySimilarity(straight, change);
    expectNear(
      fanPowerBySimilarity(100 * 0.2, change),
      shut!.pressureRisePa * free!.volumeFlowM3PerS,
    );
  });
});

describe('operating points', () => {
  it('a stalling fan has three against a fixed pressure, the middle one unstable', () => {
    const found = operatingPoints({ points: stalling, systemLossPa: () => 80 });
    expect(found.map(({ stable }) => stable)).toEqual([true, false, true]);
    for (const { pressureRisePa } of found) expectNear(pressureRisePa, 80);
  });

  it('straight lines cross where lines cross', () => {
    const found = operatingPoints({
      points: stalling,
      interpolation: 'linear',
      systemLossPa: () => 80,
    });
    // 40 Pa over 0.05, 50 Pa over 0.07 and 110 Pa over 0.08 m3/s.
    const flows = [0.025, 0.05 + (20 / 50) * 0.07, 0.12 + (30 / 110) * 0.08];
    expect(found.length).toBe(3);
    found.forEach(({ volumeFlowM3PerS }, k) => expectNear(volumeFlowM3PerS, flows[k]!));
  });

  it('a crossing in a point of the curve is one crossing', () => {
    const at = (systemLossPa: () => number): readonly boolean[] =>
      operatingPoints({ points: stalling, interpolation: 'linear', systemLossPa }).map(
        ({ stable }) => stable,
      );
    expect(at(() => 0)).toEqual([true]);
    expect(at(() => 100)).toEqual([true, false, true]);
    expect(operatingPoints({ points: straight, systemLossPa: () => 120 })).toEqual([]);
  });

  it('the rise goes through its points and stays between neighbours', () => {
    const rise = fanRise(stalling);
    for (const point of stalling)
      expectNear(rise(point.volumeFlowM3PerS), point.pressureRisePa, { absolute: 1e-10 });
    for (let flow = 0.05; flow < 0.12; flow += 0.001) {
      expect(rise(flow)).toBeGreaterThanOrEqual(60 - 1e-12);
      expect(rise(flow)).toBeLessThanOrEqual(110 + 1e-12);
    }
    expect(rise(0.21)).toBeNaN();
    expect(rise(-0.01)).toBeNaN();
    expect(() => fanRise([straight[0]!])).toThrow('points');
    expect(() => fanRise([straight[0]!, straight[0]!])).toThrow('points');
  });
});

describe('a fan under constant-flow control', () => {
  const full = typicalFanCurve({
    ratedFlowM3PerS: 0.1,
    ratingPressurePa: 60,
    shutOffPressurePa: 240,
    ductPressurePa: 0,
  });
  const law = constantFlowFan({
    setFlowM3PerS: 0.06,
    fullSpeedPoints: full,
    beyondShutOff: 'blocked',
  });
  const volume = (risePa: number): number => flowAt(law, -risePa).massFlowKgPerS / 1.2041;

  it('is a law without problems that holds its flow within its limits', () => {
    expect(checkFlowLaw(law)).toEqual([]);
    for (const risePa of [0, 20, 80, 150]) {
      expectNear(volume(risePa), 0.06, {
        relative: 1.1e-4,
        because: 'the held flow yields by a ten-thousandth over its range',
      });
    }
  });

  it('above them runs at full speed', () => {
    // The bare fan is 240 - 180 (Q/0.1)^2 Pa, so that 200 Pa leave 0.1 sqrt(40/180) m3/s.
    expectNear(volume(200), 0.1 * Math.sqrt(40 / 180), {
      relative: 0.005,
      because: 'the typical curve holds its closed form to 0.5 %',
    });
    expect(volume(241)).toBe(0);
  });

  it('below them runs at its lowest speed, where help makes it move more', () => {
    // The lowest speed has a free flow of 0.06 m3/s; by the fan laws its shut-off pressure follows.
    const free = 0.1 * Math.sqrt(240 / 180);
    const shutOff = 240 * (0.06 / free) ** 2;
    expectNear(volume(-20), 0.06 * Math.sqrt(1 + 20 / shutOff), {
      relative: 0.01,
      because: 'the curve goes on beyond its free flow by its points',
    });
  });

  it('refuses a flow that full speed does not reach', () => {
    expect(() =>
      constantFlowFan({ setFlowM3PerS: 0.2, fullSpeedPoints: full, beyondShutOff: 'blocked' }),
    ).toThrow('setFlowM3PerS');
  });
});

describe('a fan that is off', () => {
  it('is an opening either way, by its outlet or by its rated flow', () => {
    expect(offFanLaw({ ratedFlowM3PerS: 0.28 })).toEqual({
      kind: 'orifice',
      areaM2: 0.04,
      dischargeCoefficient: 0.5,
    });
    const law = offFanLaw({ ratedFlowM3PerS: 0.28, outletAreaM2: 0.02, lossCoefficient: 2 });
    const velocity = -flowAt(law, -12).massFlowKgPerS / (1.2041 * 0.02);
    expectNear(2 * 0.5 * 1.2041 * velocity ** 2, 12);
    expect(() => offFanLaw({ ratedFlowM3PerS: 0.28, lossCoefficient: -1 })).toThrow(
      'lossCoefficient',
    );
  });
});
