import { airAt } from '@evendraft/airflow';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { buildNetwork } from './build-network.js';
import { neutralLevelOf } from './neutral-level-of.js';
import { pressureAt } from './readings.js';
import { solveNetwork } from './solve-network.js';
import { UnknownIdError } from './unknown-id-error.js';

const dry = (temperatureC: number) => airAt({ temperatureC, pressurePa: 101325 });
const winter = dry(-10);
const indoors = dry(20);

it('lies where the pressure in the zone crosses that outdoors, for any distribution of leakage', () => {
  const leaks = fc.array(
    fc.record({
      heightM: fc.double({ min: 0, max: 8, noNaN: true }),
      areaM2: fc.double({ min: 1e-4, max: 0.05, noNaN: true }),
    }),
    { minLength: 2, maxLength: 6 },
  );
  fc.assert(
    fc.property(leaks, (openings) => {
      const { network, balance } = solved(openings);
      const heightM = neutralLevelOf(network, balance, { zoneId: 'house' })!;
      const there = pressureAt(network, balance, { zoneId: 'house', heightM });
      expect(Math.abs(there)).toBeLessThan(1e-9);
      const heights = openings.map((opening) => opening.heightM);
      // Without fan or wind it lies among the leaks; a solve is exact to about 1e-9 of the pressures.
      expect(heightM).toBeGreaterThan(Math.min(...heights) - 1e-6);
      expect(heightM).toBeLessThan(Math.max(...heights) + 1e-6);
    }),
    { seed: 1123, numRuns: 100 },
  );
});

it('lies nearer to the larger of two openings', () => {
  const { network, balance } = solved([
    { heightM: 1, areaM2: 0.04 },
    { heightM: 6, areaM2: 0.02 },
  ]);
  // Derived: 1 + 5/(1 + (0.04/0.02)^2 Ti/To), dry air of 20 and -10 °C.
  const expected = 1 + 5 / (1 + (4 * 293.15) / 263.15);
  expect(Math.abs(neutralLevelOf(network, balance, { zoneId: 'house' })! - expected)).toBeLessThan(
    1e-8,
  );
});

it('follows the air of the scenario, and there is none where both airs weigh the same', () => {
  const openings = [
    { heightM: 1, areaM2: 0.04 },
    { heightM: 6, areaM2: 0.02 },
  ];
  const zoneAir = {
    temperatureC: Float64Array.of(-10),
    densityKgPerM3: Float64Array.of(winter.densityKgPerM3),
  };
  const { network, balance } = solved(openings, { zoneAir });
  expect(neutralLevelOf(network, balance, { zoneId: 'house', scenario: { zoneAir } })).toBe(
    undefined,
  );
  const summer = { outdoorAir: dry(30), boundaryAir: nodeAirOf(dry(30)) };
  const warm = solved(openings, summer);
  // Air leaves below and enters above: the same mass balance with the densities exchanged between the openings.
  const expected = 1 + 5 / (1 + (4 * 303.15) / 293.15);
  const found = neutralLevelOf(warm.network, warm.balance, { zoneId: 'house', scenario: summer })!;
  expect(Math.abs(found - expected)).toBeLessThan(1e-8);
});

it('refuses a zone that does not exist', () => {
  const { network, balance } = solved([{ heightM: 1, areaM2: 0.04 }]);
  expect(() => neutralLevelOf(network, balance, { zoneId: 'shed' })).toThrow(UnknownIdError);
});

function nodeAirOf(air: { readonly temperatureC: number; readonly densityKgPerM3: number }) {
  return {
    temperatureC: Float64Array.of(air.temperatureC),
    densityKgPerM3: Float64Array.of(air.densityKgPerM3),
  };
}

function solved(
  openings: readonly { readonly heightM: number; readonly areaM2: number }[],
  scenario: Parameters<typeof solveNetwork>[1] = {},
) {
  const built = buildNetwork({
    outdoorAir: winter,
    zones: [{ id: 'house', origin: 'house', heightM: 0, air: indoors }],
    boundaries: [{ id: 'out', origin: 'out', heightM: 0, pressurePa: 0, air: winter }],
    links: openings.map(({ heightM, areaM2 }, index) => ({
      id: `leak ${index}`,
      origin: `leak ${index}`,
      from: 'house',
      to: 'out',
      fromHeightM: heightM,
      toHeightM: heightM,
      law: { kind: 'orifice', areaM2, dischargeCoefficient: 0.6 },
    })),
  });
  if (built.status !== 'built') throw new Error(JSON.stringify(built.issues));
  const balance = solveNetwork(built.network, scenario);
  if (balance.status !== 'solved') throw new Error(`${balance.status}: ${balance.hint}`);
  return { network: built.network, balance };
}
