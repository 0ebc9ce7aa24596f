import { compileHouse, houseWeather, parseHouse, type House } from '@evendraft/house';
import { expect, test } from 'vitest';
import { balanceStudy } from './balance-study.js';
import type { StateBalance } from './state-balance.js';

/** A tight synthetic house with a ducted hood and a plenum beside its exhaust. */
function house(hood: object, plenum: object = {}): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Synthetic',
    floorArea: '200 m2',
    ceilingHeight: '2.5 m',
    airtightness: '100 L/s at 50 Pa',
    exhaust: { hood: { flow: '300 L/s', shutOffPressure: '500 Pa', ...hood } },
    makeUp: {
      plenum: {
        opensWith: 'hood',
        throughHood: 'hood',
        faceArea: '0.2 m2',
        area: '500 cm2',
        ...plenum,
      },
    },
    weather: [{ name: 'still', outdoorTemperature: '20 C', wind: 'calm' }],
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

function balance(of: House): StateBalance {
  const result = compileHouse(of);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const state = { running: { hood: 'on' }, doors: {} };
  const weather = houseWeather(of, of.weathers[0]!);
  const study = balanceStudy(result.compiled, { state, weather });
  if (study.status !== 'solved') throw new Error(study.hint);
  return study;
}

const duct = { diameter: '250 mm', length: '5 m', cap: { loss: 1 } };

test('a plenum has its flow over its face area as its face velocity', () => {
  const [plenum] = balance(house({ duct })).makeUp;
  expect(plenum?.flowM3PerS).toBeGreaterThan(0.1);
  expect(plenum?.faceVelocityMPerS).toBe((plenum?.flowM3PerS ?? Number.NaN) / 0.2);
});

test('only the zones of the house are shown, and a place between parts goes by its item', () => {
  const { zones, proof } = balance(house({ duct }));
  expect(zones.map(({ zone }) => zone)).toEqual(['house']);
  expect(['house', 'hood']).toContain(proof.worstZone);
});

test('what is delivered is what the fan takes in, and air is kept along the duct', () => {
  const study = balance(house({ duct, blower: 'remote' }));
  const [hood] = study.devices;
  // All air that leaves by the hood came in by the plenum and the leaks: 0.1 m3/s at 50 Pa, exponent 0.65.
  const suction = -(study.zones[0]?.pressurePa ?? Number.NaN);
  const leaks = 0.1 * (suction / 50) ** 0.65;
  const plenum = study.makeUp[0]?.flowM3PerS ?? Number.NaN;
  // The leaks count outdoor air, 4e-5 lighter.
  expect(hood?.deliveredFlowM3PerS).toBeCloseTo(plenum + leaks, 4);
});

test('a duct beyond the range of its law is named, and one within it is not', () => {
  expect(balance(house({ duct }))).not.toHaveProperty('warnings');
  const rough = { diameter: '100 mm', length: '5 m', roughness: '8 mm' };
  const { warnings } = balance(house({ duct: rough }));
  expect(warnings).toMatchObject([
    { item: 'hood', part: 'duct', code: 'RoughnessBeyondLaw', most: 0.05 },
  ]);
  expect(warnings?.[0]?.found).toBeCloseTo(0.08, 12);
});
