import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { airAt } from './air-at.js';
import { referenceAir } from './reference-air.js';

test('dry air at 20 °C and sea level is the reference air to its printed digits', () => {
  const air = airAt({ temperatureC: 20, altitudeM: 0 });
  expectNear(air.densityKgPerM3, 1.2041, {
    absolute: 5e-5,
    because: 'the density of the reference is defined by a rounded value',
  });
  expectNear(referenceAir.viscosityPaS, 1.813e-5, {
    absolute: 5e-9,
    because: 'the standard prints four digits',
  });
  expect(air.viscosityPaS).toBe(referenceAir.viscosityPaS);
  expect(air.temperatureC).toBe(20);
});

test('an altitude stands for the pressure of the standard atmosphere', () => {
  const high = airAt({ temperatureC: 15 - 0.0065 * 1500, altitudeM: 1500 });
  expectNear(high.densityKgPerM3, 1.05806, {
    absolute: 1e-5,
    because: 'density of the standard atmosphere at 1500 m, computed by hand to six digits',
  });
});

test('a given pressure and humidity are used', () => {
  const dry = airAt({ temperatureC: 25, pressurePa: 100000 });
  const humid = airAt({ temperatureC: 25, pressurePa: 100000, relativeHumidity: 0.4 });
  expectNear(dry.densityKgPerM3, 100000 / (287.055 * 298.15));
  expect(humid.densityKgPerM3).toBeLessThan(dry.densityKgPerM3);
});
