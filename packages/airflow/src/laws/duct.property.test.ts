import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { referenceAir } from '../air/reference-air.js';
import { frictionFactor } from '../ducts/friction-factor.js';
import { duct } from './duct.js';
import type { DuctDescription, DuctSection } from './flow-law-description.js';
import { checkFlowLaw, flowAt } from './flow-laws.js';
import { inletAir, type AirState } from './inlet-air.js';

const seed = 1125;
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });
const spread = (least: number, most: number): fc.Arbitrary<number> =>
  between(Math.log(least), Math.log(most)).map(Math.exp);

const section: fc.Arbitrary<DuctSection> = fc
  .record({
    lengthM: spread(0.01, 60),
    diameterM: spread(0.03, 1),
    roughness: fc.oneof(fc.constant(0), spread(1e-6, 0.2)),
    frictionMultiplier: fc.oneof(fc.constant(1), between(1, 10)),
    lossCoefficient: fc.oneof(fc.constant(0), spread(0.01, 50)),
  })
  .map(({ diameterM, roughness, ...own }) => ({
    ...own,
    hydraulicDiameterM: diameterM,
    areaM2: (Math.PI / 4) * diameterM ** 2,
    roughnessM: roughness * diameterM,
  }));
const description: fc.Arbitrary<DuctDescription> = fc
  .array(section, { minLength: 1, maxLength: 4 })
  .map((sections) => ({ kind: 'duct', sections }));
const air: fc.Arbitrary<AirState> = fc.record({
  temperatureC: between(-40, 300),
  densityKgPerM3: between(0.6, 1.5),
});
const pressurePa = spread(1e-5, 1e5);

/** Loss by the formula itself, section by section [Pa]. */
function lossPa({ sections }: DuctDescription, massFlowKgPerS: number): number {
  const { densityKgPerM3, viscosityPaS } = referenceAir;
  return sections.reduce((sum, part) => {
    const flux = massFlowKgPerS / part.areaM2;
    const reynolds = (flux * part.hydraulicDiameterM) / viscosityPaS;
    const friction = frictionFactor(reynolds, part.roughnessM / part.hydraulicDiameterM);
    const lengths = (part.frictionMultiplier * part.lengthM) / part.hydraulicDiameterM;
    return sum + ((friction * lengths + part.lossCoefficient) * flux * flux) / (2 * densityKgPerM3);
  }, 0);
}

test('the flow loses just the pressure difference that drives it', () => {
  fc.assert(
    fc.property(description, pressurePa, (law, x) => {
      expect(checkFlowLaw(law)).toEqual([]);
      expectNear(lossPa(law, flowAt(law, x).massFlowKgPerS), x, { relative: 1e-12 });
    }),
    { seed, numRuns: 2000 },
  );
});

test('the flow grows strictly with the pressure difference, and is odd where the airs are alike', () => {
  fc.assert(
    fc.property(description, pressurePa, air, (law, x, alike) => {
      const at = (differencePa: number): number =>
        flowAt(law, differencePa, { from: alike, to: alike }).massFlowKgPerS;
      expect(at(x * 1.001)).toBeGreaterThan(at(x));
      expect(at(-x)).toBe(-at(x));
      expect(at(0)).toBe(0);
    }),
    { seed, numRuns: 500 },
  );
});

test('the slope is that of a finite difference, through every join', () => {
  fc.assert(
    fc.property(description, pressurePa, (law, x) => {
      const step = 1e-5 * x;
      const { slopeKgPerSPa } = flowAt(law, x);
      const above = flowAt(law, x + step).massFlowKgPerS;
      const below = flowAt(law, x - step).massFlowKgPerS;
      expectNear((above - below) / (2 * step), slopeKgPerSPa, {
        relative: 1e-4,
        because: 'a difference across a join sees half of each curvature, 1e-5 times a few',
      });
    }),
    { seed, numRuns: 1000 },
  );
});

test('a duct cut into halves is the same duct', () => {
  fc.assert(
    fc.property(section, pressurePa, between(0.01, 0.99), (whole, x, share) => {
      const parts = [share, 1 - share].map((part) => ({
        ...whole,
        lengthM: part * whole.lengthM,
        lossCoefficient: part * whole.lossCoefficient,
      }));
      expectNear(
        flowAt({ kind: 'duct', sections: parts }, x).massFlowKgPerS,
        flowAt({ kind: 'duct', sections: [whole] }, x).massFlowKgPerS,
        { relative: 1e-12 },
      );
    }),
    { seed, numRuns: 500 },
  );
});

test('the inverse gives the pressure difference of a flow and the slope there', () => {
  fc.assert(
    fc.property(description, pressurePa, air, air, between(0.1, 3), (law, x, from, to, scale) => {
      const recordLength = duct.recordLength(law);
      const records = new Float64Array(recordLength);
      duct.prepare(law, { from: inletAir(from), to: inletAir(to), scale, records, at: 0 });
      const group = { records, recordLength, begin: 0, end: 1 };
      const state = {
        pressureDifferencePa: Float64Array.of(-x),
        massFlowKgPerS: new Float64Array(1),
        slopeKgPerSPa: new Float64Array(1),
      };
      duct.block(group, state);
      const slope = state.slopeKgPerSPa[0]!;
      expectNear(state.massFlowKgPerS[0]!, scale * flowAt(law, -x, { from, to }).massFlowKgPerS, {
        relative: 1e-12,
      });
      state.pressureDifferencePa[0] = 0;
      duct.inverseBlock!(group, state);
      expectNear(state.pressureDifferencePa[0]!, -x, { relative: 1e-12 });
      expectNear(state.slopeKgPerSPa[0]!, slope, {
        relative: 1e-8,
        because: 'the slope belongs to a flow that is right to 1e-9, corrected by its exponent',
      });
    }),
    { seed, numRuns: 500 },
  );
});
