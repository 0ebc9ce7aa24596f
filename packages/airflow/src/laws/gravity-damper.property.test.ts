import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import type { GravityDamperDescription } from './flow-law-description.js';
import { checkFlowLaw, flowAt } from './flow-laws.js';

const seed = 1125;
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

const description: fc.Arbitrary<GravityDamperDescription> = fc
  .record({
    areaM2: between(0.001, 0.5),
    openLossCoefficient: between(0.3, 20),
    crackingPressurePa: fc.oneof(fc.constant(0), between(0.1, 20)),
    spanPa: between(0.05, 40),
    closedLeakage: fc.option(
      fc.record({ coefficientM3PerSPaN: between(1e-6, 1e-2), exponent: between(0.5, 1) }),
      { nil: undefined },
    ),
  })
  .map(({ spanPa, closedLeakage, ...damper }) => ({
    kind: 'gravityDamper',
    ...damper,
    fullyOpenPressurePa: damper.crackingPressurePa + spanPa,
    ...(closedLeakage === undefined ? {} : { closedLeakage }),
  }));
const pressurePa = fc.oneof(between(-100, 100), between(-0.1, 0.1));

test('a gravity damper never passes less at a greater pressure difference, and nothing at none', () => {
  fc.assert(
    fc.property(description, pressurePa, between(0, 5), (law, x, more) => {
      expect(checkFlowLaw(law)).toEqual([]);
      const flow = flowAt(law, x).massFlowKgPerS;
      expect(flowAt(law, x + more).massFlowKgPerS).toBeGreaterThanOrEqual(flow);
      expect(flowAt(law, 0).massFlowKgPerS).toBe(0);
    }),
    { seed, numRuns: 500 },
  );
});

test('its slope is that of a finite difference, and does not jump where the blade starts or ends to move', () => {
  fc.assert(
    fc.property(description, fc.constantFrom(0, 1e-3, 0.5, 0.999, 1, 1.5), (law, share) => {
      const { crackingPressurePa: crack, fullyOpenPressurePa: full } = law;
      const x = Math.max(1e-3, crack + share * (full - crack));
      const step = 1e-6 * x;
      const at = flowAt(law, x);
      const above = flowAt(law, x + step);
      const below = flowAt(law, x - step);
      const bend = Math.max(
        Math.abs(above.slopeKgPerSPa - at.slopeKgPerSPa),
        Math.abs(below.slopeKgPerSPa - at.slopeKgPerSPa),
      );
      // By the mean value theorem the quotient is a slope in between; rounding is that of the flows.
      const quotient = (above.massFlowKgPerS - below.massFlowKgPerS) / (2 * step);
      const rounding = (1e-15 * Math.abs(above.massFlowKgPerS)) / step + 1e-9 * at.slopeKgPerSPa;
      expect(Math.abs(quotient - at.slopeKgPerSPa)).toBeLessThanOrEqual(bend + rounding);
      // The blade's slope grows by at most 6 of its mean slopes over the span, and sqrt by its own.
      const openFlow = flowAt(law, full).massFlowKgPerS;
      const meanSlope = openFlow / (full - crack) + at.slopeKgPerSPa;
      expect(bend).toBeLessThanOrEqual(20 * meanSlope * (step / (full - crack) + step / x));
    }),
    { seed, numRuns: 500 },
  );
});

test('with the airs alike its leak answers alike both ways', () => {
  fc.assert(
    fc.property(description, between(0, 1), (law, share) => {
      const x = share * law.crackingPressurePa;
      expectNear(flowAt(law, -x).massFlowKgPerS, -flowAt(law, x).massFlowKgPerS);
    }),
    { seed, numRuns: 200 },
  );
});
