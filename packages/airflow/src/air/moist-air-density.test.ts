import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { moistAirDensity } from './moist-air-density.js';

test('dry air has the density of an ideal gas at sea level', () => {
  // p / (287.055 T), computed by hand.
  const because = 'the expected values are printed to seven digits';
  const dry = { pressurePa: 101325, relativeHumidity: 0 };
  expectNear(moistAirDensity({ ...dry, temperatureC: 20 }), 1.204097, { absolute: 5e-7, because });
  expectNear(moistAirDensity({ ...dry, temperatureC: 15 }), 1.224991, { absolute: 5e-7, because });
});

test('humid air is lighter than dry air by the simple formula of OIML R111', () => {
  // rho = (0.34848 p − 0.009 h exp(0.061 t)) / (273.15 + t), p in hPa, h in % (formula from memory).
  const because = 'two approximations; that formula is itself good to 2e-4';
  expectNear(
    moistAirDensity({ temperatureC: 20, pressurePa: 101325, relativeHumidity: 0.5 }),
    1.199294,
    { relative: 5e-4, because },
  );
});

test('humidity hardly matters in frost', () => {
  const frost = { temperatureC: -20, pressurePa: 101325 };
  expectNear(
    moistAirDensity({ ...frost, relativeHumidity: 1 }),
    moistAirDensity({ ...frost, relativeHumidity: 0 }),
    { relative: 5e-4, because: 'saturated vapour has 126 Pa of 101325 at -20 °C' },
  );
});

test.each([
  [{ temperatureC: Number.NaN }, 'temperatureC'],
  [{ pressurePa: 0 }, 'pressurePa'],
  [{ pressurePa: Infinity }, 'pressurePa'],
  [{ relativeHumidity: 50 }, 'relativeHumidity'],
  [{ relativeHumidity: -0.1 }, 'relativeHumidity'],
  [{ temperatureC: 120, relativeHumidity: 1 }, 'relativeHumidity'],
])('air that cannot be is refused: %o', (part, argument) => {
  const state = { temperatureC: 20, pressurePa: 101325, relativeHumidity: 0.5, ...part };
  expect(() => moistAirDensity(state)).toThrow(expect.objectContaining({ argument }));
});
