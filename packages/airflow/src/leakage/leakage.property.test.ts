import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { coefficientFromFlow } from './coefficient-from-flow.js';
import { coefficientFromLeakageArea } from './coefficient-from-leakage-area.js';
import { flowAtPressure } from './flow-at-pressure.js';
import { leakageAreaFromCoefficient } from './leakage-area-from-coefficient.js';

const seed = 1106;
const exponent = fc.double({ min: 0.5, max: 1, noNaN: true });
const pressurePa = fc.double({ min: 0.1, max: 100, noNaN: true });
const volumeFlowM3PerS = fc.double({ min: 1e-4, max: 5, noNaN: true });
const areaM2 = fc.double({ min: 1e-6, max: 1, noNaN: true });
const dischargeCoefficient = fc.double({ min: 0.3, max: 1, noNaN: true });

test('a leak known by a flow passes that flow, either way', () => {
  fc.assert(
    fc.property(volumeFlowM3PerS, pressurePa, exponent, (flow, pressure, n) => {
      const coefficientM3PerSPaN = coefficientFromFlow({
        volumeFlowM3PerS: flow,
        pressurePa: pressure,
        exponent: n,
      });
      const leak = { coefficientM3PerSPaN, exponent: n };
      expectNear(flowAtPressure({ ...leak, pressurePa: pressure }), flow);
      expectNear(flowAtPressure({ ...leak, pressurePa: -pressure }), -flow);
    }),
    { seed },
  );
});

test('an area becomes a coefficient and the same area again', () => {
  fc.assert(
    fc.property(areaM2, pressurePa, dischargeCoefficient, exponent, (area, pressure, cd, n) => {
      const basis = { referencePressurePa: pressure, dischargeCoefficient: cd, exponent: n };
      const coefficientM3PerSPaN = coefficientFromLeakageArea({ areaM2: area, ...basis });
      expectNear(leakageAreaFromCoefficient({ coefficientM3PerSPaN, ...basis }), area);
    }),
    { seed },
  );
});

test('at its reference pressure a leakage area passes what a sharp opening of that area passes', () => {
  fc.assert(
    fc.property(areaM2, pressurePa, dischargeCoefficient, exponent, (area, pressure, cd, n) => {
      const coefficientM3PerSPaN = coefficientFromLeakageArea({
        areaM2: area,
        referencePressurePa: pressure,
        dischargeCoefficient: cd,
        exponent: n,
      });
      const flow = flowAtPressure({ coefficientM3PerSPaN, exponent: n, pressurePa: pressure });
      expectNear(flow, cd * area * Math.sqrt((2 * pressure) / 1.2041));
    }),
    { seed },
  );
});

test('no pressure, no flow', () => {
  expect(flowAtPressure({ coefficientM3PerSPaN: 0.05, exponent: 0.65, pressurePa: 0 })).toBe(0);
});
