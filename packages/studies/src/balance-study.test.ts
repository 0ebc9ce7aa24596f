import { compileHouse, houseWeather, parseHouse, type House } from '@evendraft/house';
import { expect, test } from 'vitest';
import { balanceStudy } from './balance-study.js';
import { lawRangeWarnings } from './law-range-warnings.js';
import { resolveColumns } from './resolve-columns.js';
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

test('a warning of a flue judges its gas, not the air of the room, and names the part', () => {
  const read = parseHouse({
    evendraft: 1,
    name: 'Sorrel Lane 2',
    floorArea: '100 m2',
    airtightness: '1500 L/s at 50 Pa',
    zones: { main: { kind: 'living', area: '100 m2' } },
    appliances: {
      stove: {
        kind: 'wood stove',
        vent: 'natural draft',
        fuel: 'wood',
        zone: 'main',
        input: '10 kW',
        flue: {
          height: '30 m',
          diameter: '3 in',
          construction: 'single-wall metal',
          draftHood: false,
          barometricRegulator: false,
          idleOpening: '40 cm2',
          duringTest: 'sealed',
        },
      },
    },
    weather: [{ name: 'cold', outdoorTemperature: '-30 C', wind: 'calm' }],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const result = compileHouse(read.house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const stage = read.house.appliances[0]!.flue!.stages.find(({ gas }) => gas !== undefined)!.name;
  const { compiled } = result;
  const { result: solved, scenario } = resolveColumns(compiled, {
    state: { running: {}, doors: {}, firing: { stove: stage } },
    weather: houseWeather(read.house, read.house.weathers[0]!),
    airtightnessCase: 0,
  });
  if (solved.status !== 'solved') throw new Error(solved.hint);
  const vent = compiled.links.findIndex(({ role }) => role.kind === 'flue' && role.part === 'vent');
  const { zoneIndex } = compiled.network;
  const gas =
    scenario.zoneAir!.densityKgPerM3[zoneIndex.get(compiled.links[vent]!.description.from)!]!;
  expect(gas).toBeLessThan(1.1);
  // 105 m/s as gas, beyond the 100 m/s of the law, and some 92 m/s as air of the room.
  const area = (Math.PI / 4) * 0.0762 ** 2;
  const massFlowKgPerS = new Float64Array(compiled.links.length);
  massFlowKgPerS[vent] = 105 * gas * area;
  const links = { ...solved.links, massFlowKgPerS };
  const warnings = lawRangeWarnings(compiled, { ...solved, links }, scenario);
  const fast = warnings.filter(({ code }) => code === 'VelocityBeyondLaw');
  // Each stretch of the flue has its own.
  expect(fast.length).toBeGreaterThan(0);
  for (const { item, part } of fast) expect([item, part]).toEqual(['stove', 'vent']);
  expect(fast[0]!.found).toBeCloseTo(105, 9);
});
