import { describe, expect, it } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { flowAt } from '../laws/flow-laws.js';
import type { DuctDescription } from '../laws/flow-law-description.js';
import { dryerFittingLengths } from './dryer-fitting-lengths.js';
import { ductLoss } from './duct-loss.js';
import { ductRoughnesses } from './duct-roughnesses.js';
import { enlargementLoss, enlargementLossCoefficient } from './enlargement-loss.js';
import { equivalentLength, lossFromEquivalentLength } from './equivalent-length.js';
import { fittingLosses } from './fitting-losses.js';
import { flexibleDuctFactor } from './flexible-duct-factor.js';
import { freeAreaLossCoefficient } from './free-area-loss-coefficient.js';
import { screenLossCoefficient } from './screen-loss-coefficient.js';
import { terminalOpenings } from './terminal-openings.js';
import { velocityFromPressure, velocityPressure } from './velocity-pressure.js';

const air = { temperatureC: 20, densityKgPerM3: 1.2041 };

describe('losses of ducts', () => {
  it('a duct loses at a flow the pressure that drives that flow, with its sign', () => {
    const section = {
      lengthM: 6,
      hydraulicDiameterM: 0.15,
      areaM2: 0.0177,
      roughnessM: 9e-5,
      frictionMultiplier: 1,
      lossCoefficient: 2,
    };
    const duct: DuctDescription = { kind: 'duct', sections: [section] };
    const volumeFlowM3PerS = flowAt(duct, -25).massFlowKgPerS / 1.2041;
    expectNear(ductLoss(duct, { volumeFlowM3PerS, air }), -25, { relative: 1e-12 });
  });

  it('an opening at the end of a duct passes what an orifice of its free area passes', () => {
    const lossCoefficient = freeAreaLossCoefficient({
      ductAreaM2: 0.02,
      freeAreaM2: 0.012,
      dischargeCoefficient: 0.6,
    });
    const section = { lengthM: 0, hydraulicDiameterM: 0.16, roughnessM: 0, frictionMultiplier: 1 };
    const duct = flowAt(
      { kind: 'duct', sections: [{ ...section, areaM2: 0.02, lossCoefficient }] },
      30,
    );
    const orifice = flowAt({ kind: 'orifice', areaM2: 0.012, dischargeCoefficient: 0.6 }, 30);
    expectNear(duct.massFlowKgPerS, orifice.massFlowKgPerS);
    expectNear(duct.slopeKgPerSPa, orifice.slopeKgPerSPa);
  });

  it('a screen loses what its row says, in between something in between, and nothing when it is open', () => {
    expectNear(screenLossCoefficient(0.3), 6.2);
    expectNear(screenLossCoefficient(0.6), 0.97);
    expectNear(screenLossCoefficient(0.55), (1.7 + 0.97) / 2);
    expect(screenLossCoefficient(1)).toBe(0);
    expect(() => screenLossCoefficient(0.2)).toThrow('freeShare');
  });

  it('the loss of an enlargement is its coefficient times the velocity pressure before it', () => {
    const lossPa = enlargementLoss({
      velocityBeforeMPerS: 8,
      velocityBehindMPerS: 3,
      densityKgPerM3: 1.2,
    });
    expectNear(lossPa, enlargementLossCoefficient(3 / 8) * velocityPressure(8, 1.2));
    expect(enlargementLossCoefficient(0)).toBe(1);
    expect(enlargementLossCoefficient(1)).toBe(0);
    expect(() => enlargementLossCoefficient(1.1)).toThrow('areaRatio');
  });

  it('velocity and velocity pressure are inverse', () => {
    expectNear(velocityFromPressure(velocityPressure(7.5, 1.18), 1.18), 7.5);
  });

  it('equivalent length and loss coefficient are inverse', () => {
    const duct = { frictionFactor: 0.023, hydraulicDiameterM: 0.1 };
    expectNear(lossFromEquivalentLength(equivalentLength(0.7, duct), duct), 0.7);
    // 5 ft of 4 in. duct with f = 0.02 lose 0.3 velocity pressures.
    const mitred = dryerFittingLengths['mitred 4 in 90°'].lengthM;
    const dryer = { frictionFactor: 0.02, hydraulicDiameterM: 4 * 0.0254 };
    expectNear(lossFromEquivalentLength(mitred, dryer), 0.3);
  });

  it('a flexible duct pulled tight has the friction of its wall alone', () => {
    expect(flexibleDuctFactor({ diameterM: 0.15, compression: 0 })).toBe(1);
    expect(() => flexibleDuctFactor({ diameterM: 0.15, compression: 0.4 })).toThrow('compression');
  });
});

describe('tables of ducts', () => {
  it.each([
    ['roughness', Object.entries(ductRoughnesses)],
    ['fitting', Object.entries(fittingLosses)],
    ['dryer fitting', Object.entries(dryerFittingLengths)],
    ['terminal', Object.entries(terminalOpenings)],
  ])('every %s names its source', (_, entries) => {
    expect(entries.length).toBeGreaterThan(0);
    for (const [name, entry] of entries) {
      expect(entry.source.length, name).toBeGreaterThan(10);
      expect(['found', 'memory', 'derived', 'assumed'], name).toContain(entry.status);
    }
  });

  it('a roughness that is taken lies within the range of its source', () => {
    for (const { roughnessM, leastM, mostM } of Object.values(ductRoughnesses)) {
      expect(roughnessM).toBeGreaterThanOrEqual(leastM);
      expect(roughnessM).toBeLessThanOrEqual(mostM);
    }
  });

  it('what has no source is called assumed', () => {
    for (const terminal of Object.values(terminalOpenings)) {
      expect(terminal.status).toBe('assumed');
      expect(terminal.source).toMatch(/^our choice/);
    }
  });
});
