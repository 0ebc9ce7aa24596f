import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { airFreeFraction } from './air-free-fraction.js';
import { dewPoint } from './dew-point.js';
import { saturationPressure } from '../air/saturation-pressure.js';
import { fuelElements } from './fuel-elements.js';
import { fuels, type Fuel, type FuelName } from './fuels.js';
import { productsOfCombustion } from './products-of-combustion.js';
import { spilledProducts } from './spilled-products.js';

const seed = 1124;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const tabled = fc.constantFrom(...(Object.keys(fuels) as FuelName[])).map((name) => fuels[name]);
const gas = fc
  .tuple(
    between(0.01, 1),
    between(0, 1),
    between(0, 1),
    between(0, 1),
    between(0, 0.3),
    between(0, 0.3),
  )
  .map(([methane, ethane, propane, butane, carbonDioxide, nitrogen]): Fuel => {
    const sum = methane + ethane + propane + butane + carbonDioxide + nitrogen;
    return {
      description: 'any gas',
      volumeShares: {
        methane: methane / sum,
        ethane: ethane / sum,
        propane: propane / sum,
        butane: butane / sum,
        carbonDioxide: carbonDioxide / sum,
        nitrogen: nitrogen / sum,
      },
      source: 'for this test',
      status: 'assumed',
    };
  });
const anyFuel = fc.oneof(tabled, gas);
const excess = between(0, 5);

test('what goes into a flame comes out of it', () => {
  fc.assert(
    fc.property(anyFuel, excess, between(0, 0.02), (fuel, excessAir, humidityRatioKgPerKg) => {
      const products = productsOfCombustion({ fuel, excessAir, humidityRatioKgPerKg });
      const { burntKgPerJ } = fuelElements(fuel);
      expectNear(products.flueGasKgPerJ, burntKgPerJ + products.airKgPerJ, { relative: 1e-12 });
    }),
    { seed, numRuns: 500 },
  );
});

test('excess air found from CO2 and from O2 is the excess air there was', () => {
  fc.assert(
    fc.property(anyFuel, excess, (fuel, excessAir) => {
      const { carbonDioxideFraction, oxygenFraction, flueGasKgPerJ } = productsOfCombustion({
        fuel,
        excessAir,
      });
      for (const known of [{ carbonDioxideFraction }, { oxygenFraction }]) {
        const again = productsOfCombustion({ fuel, ...known });
        expectNear(again.excessAir, excessAir, { absolute: 1e-12, relative: 1e-11 });
        expectNear(again.flueGasKgPerJ, flueGasKgPerJ, { relative: 1e-11 });
      }
    }),
    { seed, numRuns: 500 },
  );
});

test('more air makes leaner gas with a lower dew point and the same stoichiometric volume', () => {
  fc.assert(
    fc.property(anyFuel, excess, between(0.01, 1), (fuel, excessAir, more) => {
      const rich = productsOfCombustion({ fuel, excessAir });
      const lean = productsOfCombustion({ fuel, excessAir: excessAir + more });
      expect(lean.carbonDioxideFraction).toBeLessThan(rich.carbonDioxideFraction);
      expect(lean.oxygenFraction).toBeGreaterThan(rich.oxygenFraction);
      expect(lean.flueGasKgPerJ).toBeGreaterThan(rich.flueGasKgPerJ);
      expect(dewPoint(lean.waterVapourFraction * 101325)).toBeLessThan(
        dewPoint(rich.waterVapourFraction * 101325),
      );
      expect(lean.dryStoichiometricM3PerJ).toBe(rich.dryStoichiometricM3PerJ);
    }),
    { seed },
  );
});

test('the air-free fraction does not depend on how much air dilutes the gas', () => {
  fc.assert(
    fc.property(anyFuel, between(0, 3), between(1e-6, 0.002), (fuel, excessAir, airFree) => {
      const { oxygenFraction, carbonDioxideFraction } = productsOfCombustion({ fuel, excessAir });
      const undiluted = productsOfCombustion({ fuel, excessAir: 0 }).carbonDioxideFraction;
      const measured = (airFree * carbonDioxideFraction) / undiluted;
      expectNear(airFreeFraction({ measured, oxygenFraction }), airFree, {
        relative: 0.01,
        because:
          'the convention takes 20.9 % for air, which has 20.95 %: 0.9 % at four times the air',
      });
    }),
    { seed },
  );
});

test('what spills grows with input, share and CO, and nothing spills of nothing', () => {
  fc.assert(
    fc.property(anyFuel, between(0, 1), between(100, 1e5), (fuel, spilledShare, inputW) => {
      const products = productsOfCombustion({ fuel, excessAir: 1 });
      const spill = (share: number) =>
        spilledProducts({ products, inputW, spilledShare: share, carbonMonoxideAirFree: 1e-4 });
      const [part, whole, none] = [spill(spilledShare), spill(1), spill(0)];
      expectNear(part.carbonMonoxideM3PerS, spilledShare * whole.carbonMonoxideM3PerS, {
        absolute: 1e-20,
        relative: 1e-12,
      });
      expect(Object.values(none)).toEqual([0, 0, 0, 0]);
      expect(whole.waterVapourKgPerS + whole.carbonDioxideKgPerS).toBeLessThan(whole.flueGasKgPerS);
    }),
    { seed },
  );
});

test('the dew point is the inverse of the saturation pressure', () => {
  fc.assert(
    fc.property(between(-40, 95), (temperatureC) => {
      expectNear(dewPoint(saturationPressure(temperatureC)), temperatureC, {
        absolute: 2e-9,
        because: 'found to 1e-9 K',
      });
    }),
    { seed },
  );
});
