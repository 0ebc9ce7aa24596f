import {
  dewPoint,
  fuels,
  productsOfCombustion,
  type Combustion,
  type Fuel,
} from '@evendraft/airflow';
import { convert } from '@evendraft/units';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const fuelByName = { fuel: z.enum(['natural gas', 'propane', 'fuel oil', 'wood']) };
const fuelByGases = { volumeShares: z.strictObject({ methane: z.number() }) };
const byExcess = { excessAir: z.number() };
const byCarbonDioxide = { carbonDioxideFraction: z.number() };
const flame = z.union([
  z.strictObject({ ...fuelByName, ...byExcess }),
  z.strictObject({ ...fuelByName, ...byCarbonDioxide }),
  z.strictObject({ ...fuelByGases, ...byExcess }),
]);
const input = z.strictObject({ flames: z.record(z.string(), flame) });

for (const { name, input: given, expected } of publishedCases('combustion', input)) {
  test(`combustion: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.flames).map(([id, flameIn]) => [id, burnt(flameIn)]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

function burnt(given: z.infer<typeof flame>) {
  const fuel: Fuel =
    'fuel' in given
      ? fuels[given.fuel]
      : {
          description: 'a gas of this case',
          volumeShares: given.volumeShares,
          source: 'the case',
          status: 'assumed',
        };
  const combustion: Combustion =
    'excessAir' in given
      ? { fuel, excessAir: given.excessAir }
      : { fuel, carbonDioxideFraction: given.carbonDioxideFraction };
  const products = productsOfCombustion(combustion);
  const joules = convert('1', 'kBtu', 'J').value;
  // Standard cubic feet are at 68 °F and 29.92 in. Hg: 20 °C and 101,325 Pa, as our volumes.
  const dryScfPerMBtu =
    products.dryStoichiometricM3PerJ * 1000 * joules * convert('1', 'm3', 'ft3').value;
  return {
    ...products,
    dryScfPerMBtu,
    wetScfPerMBtu: dryScfPerMBtu / (1 - products.waterVapourFraction),
    carbonDioxideScfPerMBtu: dryScfPerMBtu * products.carbonDioxideFraction,
    lbPerThousandBtu: products.flueGasKgPerJ * joules * convert('1', 'kg', 'lb').value,
    dewPointC: dewPoint(products.waterVapourFraction * 101325),
  };
}
