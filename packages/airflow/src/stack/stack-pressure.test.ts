import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { airAt } from '../air/air-at.js';
import { stackPressure } from './stack-pressure.js';

test('ten metres of house at 20 °C in frost of -10 °C make 13.5 Pa', () => {
  const zone = airAt({ temperatureC: 20, altitudeM: 0 });
  const outdoors = airAt({ temperatureC: -10, altitudeM: 0 });
  const pressurePa = stackPressure({
    zoneDensityKgPerM3: zone.densityKgPerM3,
    outdoorDensityKgPerM3: outdoors.densityKgPerM3,
    heightM: 10,
  });
  expectNear(pressurePa, 13.48, {
    relative: 2e-3,
    because: 'the textbook constant 0.0342 is g over the gas constant, rounded',
  });
});

test('the warm house gains against outdoors on the way up and loses on the way down', () => {
  const densities = { zoneDensityKgPerM3: 1.2, outdoorDensityKgPerM3: 1.3 };
  expectNear(stackPressure({ ...densities, heightM: 3 }), 0.1 * 9.80665 * 3);
  expectNear(stackPressure({ ...densities, heightM: -3 }), -0.1 * 9.80665 * 3);
});

test('a density of zero is refused', () => {
  expect(() =>
    stackPressure({ zoneDensityKgPerM3: 0, outdoorDensityKgPerM3: 1.3, heightM: 3 }),
  ).toThrow(expect.objectContaining({ argument: 'zoneDensityKgPerM3' }));
});
