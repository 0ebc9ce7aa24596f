import { describe, expect, it } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { checkFlowLaw, flowAt } from '../laws/flow-laws.js';
import { closedDamperLaw } from './closed-damper-law.js';
import { damperLeakageClasses } from './damper-leakage-classes.js';
import { gravityDamperLaws } from './gravity-damper-laws.js';
import { motorizedDamperLaws } from './motorized-damper-laws.js';
import { openDamperLaw } from './open-damper-law.js';
import { typicalDampers } from './typical-dampers.js';

const flow = (law: Parameters<typeof flowAt>[0], differencePa: number): number =>
  flowAt(law, differencePa).massFlowKgPerS;
const damper = {
  areaM2: 0.03,
  openLossCoefficient: 1.8,
  leakage: 'EN 1751 class 2',
  crackingPressurePa: 2.5,
  fullyOpenPressurePa: 15,
} as const;

describe('dampers', () => {
  it('a closed damper leaks its class at the pressure of the class', () => {
    const law = closedDamperLaw({ areaM2: 0.05, leakage: 'EN 1751 class 3' });
    expectNear(flow(law, 100) / 1.2041, 0.05 * 0.008);
    expectNear(flow(law, -100) / 1.2041, -0.05 * 0.008);
  });

  it('a leakage of its own replaces a class', () => {
    const leakage = { leakageM3PerSM2: 0.01, pressurePa: 50 };
    expectNear(flow(closedDamperLaw({ areaM2: 0.05, leakage }), 50) / 1.2041, 5e-4);
  });

  it('an open damper loses its velocity pressures', () => {
    const law = openDamperLaw(damper);
    const velocityMPerS = flow(law, 20) / (1.2041 * 0.03);
    expectNear(1.8 * 0.5 * 1.2041 * velocityMPerS ** 2, 20);
  });

  it('a motorized damper passes far more open than closed', () => {
    const { open, closed } = motorizedDamperLaws(damper);
    expect(flow(open, 20)).toBeGreaterThan(20 * flow(closed, 20));
  });

  it('a working gravity damper is shut below cracking and open above its full opening', () => {
    const { working, stuckOpen, stuckShut } = gravityDamperLaws(damper);
    expectNear(flow(working, 2), flow(stuckShut, 2));
    expectNear(flow(working, -40), flow(stuckShut, -40));
    expectNear(flow(working, 30), flow(stuckOpen, 30) + flow(stuckShut, 30));
    expectNear(flow(working, 8.75), 0.5 * flow(stuckOpen, 8.75) + flow(stuckShut, 8.75));
    for (const law of [working, stuckOpen, stuckShut]) expect(checkFlowLaw(law)).toEqual([]);
  });

  it('refuses a damper that opens before it cracks, or loses less than nothing', () => {
    expect(() => gravityDamperLaws({ ...damper, fullyOpenPressurePa: 2 })).toThrow(
      'fullyOpenPressurePa',
    );
    expect(() => openDamperLaw({ areaM2: 0.03, openLossCoefficient: -1 })).toThrow(
      'openLossCoefficient',
    );
    expect(() => closedDamperLaw({ areaM2: 0, leakage: 'AMCA 1' })).toThrow('areaM2');
  });

  it('the law of a gravity damper refuses the same as data', () => {
    const { working } = gravityDamperLaws(damper);
    expect(checkFlowLaw({ ...working, fullyOpenPressurePa: 2 })).toMatchObject([
      { code: 'LawParameterOutOfRange', field: 'fullyOpenPressurePa' },
    ]);
    expect(checkFlowLaw({ ...working, areaM2: -1, openLossCoefficient: 0 })).toMatchObject([
      { field: 'areaM2' },
      { field: 'openLossCoefficient' },
    ]);
    const closedLeakage = { coefficientM3PerSPaN: -1, exponent: 0.5 };
    expect(checkFlowLaw({ ...working, closedLeakage })).toMatchObject([
      { field: 'closedLeakage.coefficientM3PerSPaN' },
    ]);
  });

  it('every class and every typical damper names its source', () => {
    for (const entry of [
      ...Object.values(damperLeakageClasses),
      ...Object.values(typicalDampers),
    ]) {
      expect(entry.source.length).toBeGreaterThan(10);
      expect(entry.status === 'assumed').toBe(entry.source.startsWith('our choice'));
    }
  });
});
