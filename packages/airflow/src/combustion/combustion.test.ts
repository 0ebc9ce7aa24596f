import { describe, expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { airFreeFraction } from './air-free-fraction.js';
import { dewPoint } from './dew-point.js';
import { fuelElements } from './fuel-elements.js';
import { fuels, type Fuel } from './fuels.js';
import { productsOfCombustion } from './products-of-combustion.js';
import { spilledProducts } from './spilled-products.js';

const methane: Fuel = {
  description: 'pure methane',
  volumeShares: { methane: 1 },
  source: 'for this test',
  status: 'assumed',
};

describe('methane burnt without excess air, by hand', () => {
  const products = productsOfCombustion({ fuel: methane, excessAir: 0 });
  // CH4 + 2 O2 → CO2 + 2 H2O with 2/0.2095 mol of air, 890.6 kJ/mol.
  const air = 2 / 0.2095;

  test('takes 2 mol of oxygen a mole', () => {
    expectNear(products.airKgPerJ, (air * 0.028965) / 890_600);
  });

  test('leaves 1 mol of carbon dioxide in dry gas and 2 mol of vapour', () => {
    const dry = 1 + 0.7905 * air;
    expectNear(products.carbonDioxideFraction, 1 / dry);
    expectNear(products.waterVapourFraction, 2 / (dry + 2));
    expectNear(products.waterVapourKgPerJ, (2 * 0.018015) / 890_600);
    expectNear(products.carbonDioxideKgPerJ, 0.044009 / 890_600);
    expectNear(products.dryStoichiometricM3PerJ, (dry * 8.314462618 * 293.15) / 101325 / 890_600);
    expect(products.oxygenFraction).toBe(0);
  });
});

test('every fuel of the table adds up to one and burns to something plausible', () => {
  for (const fuel of Object.values(fuels)) {
    const { carbonMolPerJ, hydrogenMolPerJ } = fuelElements(fuel);
    expect(carbonMolPerJ).toBeGreaterThan(1e-6);
    expect(hydrogenMolPerJ).toBeGreaterThan(1e-6);
    const products = productsOfCombustion({ fuel, excessAir: 0.5 });
    expect(products.gasConstantJPerKgK).toBeGreaterThan(270);
    expect(products.gasConstantJPerKgK).toBeLessThan(310);
    expect(products.specificHeatJPerKgK).toBeGreaterThan(1000);
    expect(products.specificHeatJPerKgK).toBeLessThan(1200);
  }
});

test('humid air adds its vapour and raises the dew point', () => {
  const fuel = fuels['natural gas'];
  const dry = productsOfCombustion({ fuel, excessAir: 0.4 });
  const humid = productsOfCombustion({ fuel, excessAir: 0.4, humidityRatioKgPerKg: 0.01 });
  expectNear(humid.waterVapourKgPerJ - dry.waterVapourKgPerJ, 0.01 * dry.airKgPerJ);
  expect(dewPoint(humid.waterVapourFraction * 101325)).toBeGreaterThan(
    dewPoint(dry.waterVapourFraction * 101325),
  );
});

test('water at the saturation pressure of 2339.3 Pa condenses at 20 °C', () => {
  expectNear(dewPoint(2339.3), 20, { absolute: 0.002, because: 'the pressure has five digits' });
});

test('half the oxygen of air means half the gas is air', () => {
  expectNear(airFreeFraction({ measured: 50, oxygenFraction: 0.1045 }), 100);
  expectNear(airFreeFraction({ measured: 50, oxygenFraction: 0 }), 50);
});

test('a water heater of 11.7 kW with 400 ppm air-free CO that spills half brings about 0.5 mL/s of CO', () => {
  const products = productsOfCombustion({ fuel: methane, excessAir: 1 });
  const spilled = spilledProducts({
    products,
    inputW: 11_700,
    spilledShare: 0.5,
    carbonMonoxideAirFree: 400e-6,
  });
  // 400e-6 × 0.5 × 11.7 kW × (1 + 0.7905 × 2/0.2095) mol/890.6 kJ × 0.024055 m3/mol
  expectNear(spilled.carbonMonoxideM3PerS, 5.40171e-7, {
    relative: 1e-5,
    because: 'multiplied by hand to six digits',
  });
  expectNear(spilled.flueGasKgPerS, 5850 * products.flueGasKgPerJ);
});

test.each([
  ['carbonDioxideFraction', { fuel: methane, carbonDioxideFraction: 0.13 }],
  ['carbonDioxideFraction', { fuel: methane, carbonDioxideFraction: 0 }],
  ['oxygenFraction', { fuel: methane, oxygenFraction: 0.21 }],
  ['excessAir', { fuel: methane, excessAir: -0.1 }],
  ['sum of volumeShares', { fuel: { ...methane, volumeShares: { methane: 0.5 } }, excessAir: 0 }],
  [
    'volumeShares, heat of combustion',
    { fuel: { ...methane, volumeShares: { nitrogen: 1 } }, excessAir: 0 },
  ],
] as const)('refuses an impossible flame: %s', (argument, combustion) => {
  expect(() => productsOfCombustion(combustion)).toThrow(expect.objectContaining({ argument }));
});
