import { describe, expect, it } from 'vitest';
import type { FanCurveDescription } from './flow-law-description.js';
import { checkFlowLaw, flowAt } from './flow-laws.js';

const points = [
  { pressureRisePa: 0, volumeFlowM3PerS: 0.2 },
  { pressureRisePa: 100, volumeFlowM3PerS: 0 },
  { pressureRisePa: 60, volumeFlowM3PerS: 0.15 },
];
const fan = (change: Partial<FanCurveDescription> = {}): FanCurveDescription => ({
  kind: 'fanCurve',
  points,
  beyondShutOff: 'blocked',
  ...change,
});
const volume = (description: FanCurveDescription, risePa: number): number =>
  flowAt(description, -risePa).massFlowKgPerS / 1.2041;

describe('fan curve', () => {
  it('goes through its points, whatever their order', () => {
    for (const point of points) {
      expect(volume(fan(), point.pressureRisePa)).toBeCloseTo(point.volumeFlowM3PerS, 12);
    }
  });

  it('continues its last slope beyond free delivery', () => {
    // Last secant: 0.05 m3/s over 60 Pa.
    expect(volume(fan(), -60)).toBeCloseTo(0.25, 12);
  });

  it('is blocked beyond shut-off, or runs backwards along its first slope', () => {
    expect(volume(fan(), 140)).toBe(0);
    expect(volume(fan({ beyondShutOff: 'extended' }), 140)).toBeCloseTo(-0.15, 12);
  });

  it('joins a first point with flow to zero flow before it blocks', () => {
    const open = fan({ points: points.filter((point) => point.volumeFlowM3PerS > 0) });
    // Its first secant is 0.05 m3/s over 60 Pa, so 0.15 m3/s at 60 Pa is 0 at 240 Pa.
    expect(volume(open, 150)).toBeCloseTo(0.075, 12);
    expect(volume(open, 250)).toBe(0);
  });

  it('names a rising part, and replaces it by its upper envelope where asked', () => {
    const rising = [
      { pressureRisePa: 80, volumeFlowM3PerS: 0 },
      { pressureRisePa: 60, volumeFlowM3PerS: 0.05 },
      { pressureRisePa: 90, volumeFlowM3PerS: 0.1 },
      { pressureRisePa: 0, volumeFlowM3PerS: 0.2 },
    ];
    expect(checkFlowLaw(fan({ points: rising }))).toMatchObject([
      { code: 'RisingFanCurve', severity: 'error' },
    ]);
    const envelope = fan({ points: rising, risingPart: 'envelope' });
    expect(checkFlowLaw(envelope)).toMatchObject([{ severity: 'warning' }]);
    expect(volume(envelope, 89.99)).toBeGreaterThan(0.09);
    expect(volume(envelope, 45)).toBeGreaterThan(0.1);
  });

  it('wants two points or more, apart in rise', () => {
    expect(checkFlowLaw(fan({ points: points.slice(0, 1) }))[0]!.code).toBe('FanCurveTooShort');
    const shared = [...points, { pressureRisePa: 60, volumeFlowM3PerS: 0.16 }];
    expect(checkFlowLaw(fan({ points: shared }))[0]!.code).toBe('FanPointsShareARise');
  });
});
