import { describe, expect, it } from 'vitest';
import { hole } from '../test-data/invented-house.js';
import { tightHall } from '../test-data/section-house.js';
import { balanceStudy } from './balance-study.js';
import { exhaustCurveStudy } from './exhaust-curve-study.js';

describe('the exhaust curve', () => {
  it('falls from the baseline, and meets the pressure of the device at its own flow', async () => {
    const { network, question } = tightHall(-5);
    const study = (await exhaustCurveStudy(network, { ...question({}), device: 'hood' }))!;
    expect(study.points[0]).toEqual({ exhaustFlowM3PerS: 0, pressurePa: study.baselinePa });
    const pressures = study.points.map(({ pressurePa }) => pressurePa);
    expect(pressures).toEqual([...pressures].sort((a, b) => b - a));
    const balance = balanceStudy(network, question({ hood: 'on' }));
    const hall = balance.status === 'solved' ? balance.zones[0]!.pressurePa : Number.NaN;
    expect(study.points.at(-1)).toEqual({
      exhaustFlowM3PerS: expect.closeTo(0.2, 9),
      pressurePa: expect.closeTo(hall, 9),
    });
    expect(study.operatingPoints).toEqual([
      {
        speed: 'on',
        exhaustFlowM3PerS: expect.closeTo(0.2, 9),
        pressurePa: expect.closeTo(hall, 9),
      },
    ]);
  });

  it('has every point also where the device has a duct, which the curve is drawn without', async () => {
    const { network, question } = tightHall(-5, {
      before: [],
      after: [{ name: 'duct', law: hole(0.03), riseM: 0 }],
      stoppedLaw: hole(0.01),
    });
    const study = (await exhaustCurveStudy(network, { ...question({}), device: 'hood' }))!;
    expect(study.points).toHaveLength(17);
  });

  it('has no answer for a device that the house does not have, and stops when told to', async () => {
    const { network, question } = tightHall(-5);
    expect(await exhaustCurveStudy(network, { ...question({}), device: 'none' })).toBeUndefined();
    await expect(
      exhaustCurveStudy(
        network,
        { ...question({}), device: 'hood' },
        { signal: AbortSignal.abort(new Error('enough')) },
      ),
    ).rejects.toThrow('enough');
  });
});
