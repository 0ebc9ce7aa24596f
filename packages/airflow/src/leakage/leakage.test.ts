import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { airAt } from '../air/air-at.js';
import { referenceAir } from '../air/reference-air.js';
import { coefficientAtReferenceAir } from './coefficient-at-reference-air.js';
import { coefficientFromFlow } from './coefficient-from-flow.js';
import { coefficientFromLeakageArea } from './coefficient-from-leakage-area.js';
import { flowAtPressure } from './flow-at-pressure.js';
import { effectiveLeakageAreaBasis, equivalentLeakageAreaBasis } from './leakage-area-basis.js';
import { leakageAreaFromCoefficient } from './leakage-area-from-coefficient.js';

test('a house of 1000 cfm at 50 Pa has an effective leakage area of about 55 square inches', () => {
  const coefficientM3PerSPaN = coefficientFromFlow({
    volumeFlowM3PerS: 1000 * 4.719474e-4,
    pressurePa: 50,
    exponent: 0.65,
  });
  const areaM2 = leakageAreaFromCoefficient({
    coefficientM3PerSPaN,
    exponent: 0.65,
    ...effectiveLeakageAreaBasis,
  });
  expectNear(areaM2 / 6.4516e-4, 1000 / 18.196, {
    relative: 3e-5,
    because: 'the divisor 18.196, computed by hand, has five digits',
  });
});

test('one leak has a larger equivalent than effective leakage area', () => {
  const leak = { coefficientM3PerSPaN: 0.05, exponent: 0.65 };
  const effective = leakageAreaFromCoefficient({ ...leak, ...effectiveLeakageAreaBasis });
  const equivalent = leakageAreaFromCoefficient({ ...leak, ...equivalentLeakageAreaBasis });
  // A2 = A1 (Cd1/Cd2)(p2/p1)^(n − 0.5)
  expectNear(equivalent / effective, (1 / 0.611) * 2.5 ** 0.15);
});

test('a coefficient measured in reference air stays what it is', () => {
  const measured = { coefficientM3PerSPaN: 0.05, exponent: 0.65, air: referenceAir };
  expect(coefficientAtReferenceAir(measured)).toBe(0.05);
});

test('only density matters to a turbulent leak, only viscosity to a laminar one', () => {
  const air = airAt({ temperatureC: -10, altitudeM: 1000 });
  const turbulent = coefficientAtReferenceAir({ coefficientM3PerSPaN: 1, exponent: 0.5, air });
  const laminar = coefficientAtReferenceAir({ coefficientM3PerSPaN: 1, exponent: 1, air });
  expectNear(turbulent, Math.sqrt(air.densityKgPerM3 / referenceAir.densityKgPerM3));
  expectNear(laminar, air.viscosityPaS / referenceAir.viscosityPaS);
});

test.each([
  () => coefficientFromFlow({ volumeFlowM3PerS: -1, pressurePa: 50, exponent: 0.65 }),
  () => coefficientFromFlow({ volumeFlowM3PerS: 1, pressurePa: 0, exponent: 0.65 }),
  () => coefficientFromFlow({ volumeFlowM3PerS: 1, pressurePa: 50, exponent: 0.4 }),
  () => flowAtPressure({ coefficientM3PerSPaN: 1, exponent: 1.1, pressurePa: 4 }),
  () => flowAtPressure({ coefficientM3PerSPaN: 1, exponent: 0.65, pressurePa: Number.NaN }),
  () => coefficientFromLeakageArea({ areaM2: -1, exponent: 0.65, ...effectiveLeakageAreaBasis }),
  () =>
    leakageAreaFromCoefficient({
      coefficientM3PerSPaN: 1,
      exponent: 0.65,
      referencePressurePa: 4,
      dischargeCoefficient: 0,
    }),
])('a leak that cannot be is refused: %s', (call) => {
  expect(call).toThrow(expect.objectContaining({ code: 'airflow.argument' }));
});
