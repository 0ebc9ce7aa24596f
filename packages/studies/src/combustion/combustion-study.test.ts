import { compileHouse, houseWeather, parseHouse, type CompiledHouse } from '@evendraft/house';
import { solveNetwork } from '@evendraft/network';
import { beforeAll, describe, expect, it } from 'vitest';
import { worstCaseStudy, type WorstCaseStudy } from '../worst-case-study.js';
import { combustionSituation, type SolvedCombustion } from './combustion-situation.js';
import { combustionStudy, type CombustionStudy } from './combustion-study.js';
import { findDraftRoots } from './find-draft-roots.js';
import { fluesOfSituation } from './flues-of-situation.js';
import { gasOfRoot } from './gas-of-root.js';
import { houseWithoutFlues } from './house-without-flues.js';
import { statesOfFlues } from './states-of-flues.js';
import { scenarioWithGas } from './scenario-with-gas.js';
import { settleFlues } from './settle-flues.js';

const heaterFlue = {
  height: '7 m',
  diameter: '175 mm',
  construction: 'masonry, tile-lined',
  exteriorShare: '20 %',
  collarHeight: '1.5 m',
  connector: { length: '2 m', rise: '0.5 m', diameter: '100 mm', elbows: 2 },
  draftHood: { reliefArea: '120 cm2' },
  duringTest: 'sealed',
};
const heater = { vent: 'natural draft', fuel: 'gas', input: '12 kW', flue: heaterFlue };

function house(more: object = {}): CompiledHouse {
  const parsed = parseHouse({
    evendraft: 1,
    name: 'Larch Bend 3',
    floorArea: '180 m2',
    volume: '440 m3',
    airtightness: { result: '2 ACH50', direction: 'depressurized' },
    exhaust: {
      hood: { kind: 'hood', low: '120 L/s', high: '280 L/s' },
      dryer: { kind: 'dryer', flow: '60 L/s' },
    },
    weather: [
      { name: 'cold', outdoorTemperature: '-10 C', wind: 'calm' },
      { name: 'hot', outdoorTemperature: '32 C', wind: 'calm' },
    ],
    appliances: { 'water heater': heater },
    ...more,
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const compiled = compileHouse(parsed.house);
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.issues));
  return compiled.compiled;
}

function restOf(compiled: CompiledHouse) {
  const rest = houseWithoutFlues(compiled);
  if ('withoutAir' in rest) throw new Error(rest.withoutAir.join());
  return rest;
}

function situation(
  compiled: CompiledHouse,
  of: {
    readonly running?: Readonly<Record<string, string>>;
    readonly firing?: Readonly<Record<string, string>>;
    readonly weather?: number;
    readonly appliance?: string;
  },
): SolvedCombustion {
  const { running = {}, firing = { 'water heater': 'firing' }, weather = 0 } = of;
  const solved = combustionSituation(compiled, statesOfFlues(compiled, restOf(compiled)), {
    appliance: of.appliance ?? 'water heater',
    state: { running, doors: {} },
    firing,
    weather: houseWeather(compiled.house, compiled.house.weathers[weather]!),
    airtightnessCase: 0,
  });
  if ('reason' in solved) throw new Error(solved.reason);
  return solved;
}

describe('one appliance in one situation', () => {
  const compiled = house();

  it('drafts from cold in cold weather with nothing running', () => {
    const { situation: found } = situation(compiled, {});
    expect(found.verdict).toBe('drafts from cold');
    expect(found.states).toHaveLength(1);
    expect(found.states[0]!.flues[0]!.spilledShare).toBe(0);
    expect(found.states[0]!.flues[0]!.tapDraftPa).toBeLessThan(-1);
  });

  it('drafts only once warm with the hood low: three states, cold air down the first', () => {
    const { situation: found } = situation(compiled, { running: { hood: 'low' } });
    expect(found.verdict).toBe('drafts only once warm');
    expect(found.states.map(({ stable }) => stable)).toEqual([true, false, true]);
    expect([found.fromCold, found.fromWarm]).toEqual([0, 2]);
    expect(found.states[0]!.flues[0]!.massFlowKgPerS).toBeLessThan(0);
    expect(found.states[0]!.flues[0]!.spilledShare).toBe(1);
  });

  it('is reversed with the hood high, whatever the flue was before', () => {
    const { situation: found } = situation(compiled, { running: { hood: 'high' } });
    expect(found.verdict).toBe('reversed');
    expect(found.states).toHaveLength(1);
  });

  it('closes pressure, heat and mass to 1e-9 in every state, in the network of the whole house', () => {
    for (const running of [{}, { hood: 'low' }, { hood: 'high' }]) {
      for (const weather of [0, 1]) {
        const { situation: found } = situation(compiled, { running, weather });
        expect(found.complete).toBe(true);
        for (const { closure } of found.states) {
          expect(closure.gapPa).toBeLessThan(1e-9);
          expect(closure.heatImbalance).toBeLessThan(1e-9);
          expect(closure.massImbalance).toBeLessThan(1e-9);
          expect(closure.flowDifference).toBeLessThan(1e-9);
        }
      }
    }
  });

  it('has its verdict where its thresholds and the house’s own pressure say so', () => {
    for (const running of [{}, { hood: 'low' }, { hood: 'high' }]) {
      const { situation: found } = situation(compiled, { running });
      const { coldEstablishes, hotReverses } = found.thresholds!;
      expect(coldEstablishes.roomPa).toBeGreaterThan(hotReverses.roomPa);
      const cold = coldEstablishes.houseGivesPa > coldEstablishes.roomPa;
      const hot = hotReverses.houseGivesPa > hotReverses.roomPa;
      const expected = cold ? 'drafts from cold' : hot ? 'drafts only once warm' : 'reversed';
      expect(found.verdict).toBe(expected);
    }
  });

  it('has the states in a room held at a pressure that its thresholds tell', () => {
    const { situation: found, set } = situation(compiled, {});
    const { coldEstablishes, hotReverses } = found.thresholds!;
    const stableAt = (roomPa: number): readonly boolean[] =>
      findDraftRoots({ systems: set.systems, response: () => [roomPa] })
        .roots.filter(({ stable }) => stable)
        .map(({ flows }) => flows[0]! > 0);
    // In calm air the pressure at the top of the flue is that of undisturbed outdoors.
    expect(stableAt(coldEstablishes.roomPa + 0.01)).toEqual([true]);
    expect(stableAt(coldEstablishes.roomPa - 0.01)).toEqual([false, true]);
    expect(stableAt(hotReverses.roomPa + 0.01)).toEqual([false, true]);
    expect(stableAt(hotReverses.roomPa - 0.01)).toEqual([false]);
  });

  it('comes to rest from any flow in one of its stable states', () => {
    const { set, roots } = situation(compiled, { running: { hood: 'low' } });
    const stable = roots.filter((root) => root.stable).map(({ flows }) => flows[0]!);
    for (const start of [-0.05, -0.01, 0, 0.001, 0.004, 0.01, 0.05]) {
      const rest = settleFlues(compiled, set, [start])![0]!;
      // The iteration ends at a change of 1e-8.
      expect(Math.min(...stable.map((flow) => Math.abs(flow - rest)))).toBeLessThan(1e-6);
    }
  });
});

describe('a natural-draft appliance without a draft hood, whose burner is open to no room air', () => {
  const flue = { height: '7 m', diameter: '150 mm', construction: 'insulated metal chimney' };
  const compiled = house({
    appliances: {
      boiler: {
        ...{ vent: 'natural draft', fuel: 'pellets', input: '15 kW' },
        flue: { ...flue, collarHeight: '1.5 m', duringTest: 'sealed' },
      },
    },
  });
  const of = (running: Readonly<Record<string, string>>) =>
    situation(compiled, { running, firing: { boiler: 'firing' }, appliance: 'boiler' });

  it('drafts where its vent stands below the room', () => {
    const { situation: found } = of({});
    expect(found.verdict).toBe('drafts from cold');
    expect(found.states[found.fromWarm]!.flues[0]!.tapDraftPa).toBeLessThan(0);
  });

  it('never counts as drafting where the suction of the house lifts its vent above the room', () => {
    const { situation: found } = of({ hood: 'high' });
    const [reading] = found.states[found.fromWarm]!.flues;
    // Some 30 Pa of buoyancy against the suction of the hood; the burner moves its gas all the same.
    expect(reading!.roomPa).toBeLessThan(-40);
    expect(reading!.massFlowKgPerS).toBeGreaterThan(0);
    expect(reading!.tapDraftPa).toBeGreaterThan(10);
    expect([found.verdict, reading!.spilledShare]).toEqual(['spills in part', 1]);
  });

  it('then spills without end from the start, and no carbon monoxide is told that was not worked out', async () => {
    const worstCase = await worstCaseStudy(compiled);
    const study = await combustionStudy(compiled, { worstCase, temperaturesC: [] });
    const [boiler] = study.appliances;
    expect(boiler!.situations[0]!.verdict).toBe('spills in part');
    expect(boiler!.courses.map(({ spillageS }) => spillageS)).toEqual([null, null]);
    expect(boiler!.spilled).toBeUndefined();
  });
});

describe('two appliances on one chimney', () => {
  const compiled = house({
    appliances: {
      furnace: {
        ...heater,
        input: '25 kW',
        sharesVentWith: ['water heater'],
        flue: { ...heaterFlue, connector: { length: '1.5 m', rise: '0.5 m', diameter: '125 mm' } },
      },
      'water heater': {
        ...heater,
        sharesVentWith: ['furnace'],
        flue: {
          diameter: '100 mm',
          collarHeight: '1.5 m',
          connector: { length: '2 m', rise: '0.5 m', elbows: 2 },
          duringTest: 'sealed',
        },
      },
    },
  });

  it('closes both flues in every state', () => {
    for (const weather of [0, 1]) {
      const { situation: found } = situation(compiled, { weather });
      expect(found.complete).toBe(true);
      for (const { closure, stable } of found.states) {
        expect(closure.gapPa).toBeLessThan(1e-9);
        expect(closure.heatImbalance).toBeLessThan(1e-9);
        // Gas of a chimney that comes down a connector is denser in the network, which has its mean.
        if (stable) expect(closure.flowDifference).toBeLessThan(1e-2);
      }
    }
  });

  it('sends gas of one out of the hood of the other where that runs down', () => {
    const set = fluesOfSituation(compiled, restOf(compiled), {
      state: { running: { hood: 'low' }, doors: {}, firing: { furnace: 'firing' } },
      weather: houseWeather(compiled.house, compiled.house.weathers[0]!),
      airtightnessCase: 0,
    });
    const crossing = findDraftRoots(set).roots.find(
      ({ flows }) => flows[0]! > 0 && flows[1]! < 0 && flows[0]! + flows[1]! > 0,
    );
    expect(crossing).toBeDefined();
    const gas = gasOfRoot(crossing!.systems);
    const balance = solveNetwork(compiled.network, scenarioWithGas(compiled, set, gas));
    expect(balance.status).toBe('solved');
  });
});

describe('the study', () => {
  let worstCase: WorstCaseStudy;
  let study: CombustionStudy;
  const compiled = house();
  beforeAll(async () => {
    worstCase = await worstCaseStudy(compiled);
    study = await combustionStudy(compiled, { worstCase, temperaturesC: [-20, 0, 30] });
  });

  it('is plain data', () => {
    expect(JSON.parse(JSON.stringify(study))).toEqual(study);
    expect(JSON.stringify(study)).not.toContain('null,null,null');
  });

  it('puts the least favourable situation first, and says why each was looked at', () => {
    const [appliance] = study.appliances;
    expect(appliance!.situations[0]!.verdict).toBe('reversed');
    expect(appliance!.situations[0]!.label).toContain('hood high');
    expect(new Set(appliance!.situations.map(({ why }) => why))).toEqual(
      new Set(['deepest', 'nothing running']),
    );
    expect(study.situations).toBe(4);
  });

  it('follows a start from cold and from warm: spillage that does not end', () => {
    const [cold, warm] = study.appliances[0]!.courses;
    expect([cold!.start, warm!.start]).toEqual(['cold', 'warm']);
    expect(cold!.spillageS).toBeNull();
    expect(warm!.spillageS).toBeNull();
    expect(cold!.settled).toBe(true);
    // A hot flue holds against the suction for a moment at least: it begins with some upward flow or less backdraft.
    expect(warm!.rows[0]!.massFlowKgPerS).toBeGreaterThan(cold!.rows[0]!.massFlowKgPerS);
  });

  it('has most carbon monoxide where spilled gas stays: with nothing running, not with the hood', () => {
    const { spilled } = study.appliances[0]!;
    expect(spilled!.label).not.toContain('hood');
    const [zone] = spilled!.zones;
    const course = zone!.carbonMonoxideCoursePpm;
    expect(course[0]).toBe(0);
    expect(course.every((ppm, i) => i === 0 || ppm >= course[i - 1]!)).toBe(true);
    expect(zone!.carbonMonoxidePpm!).toBeGreaterThanOrEqual(course.at(-1)! * (1 - 1e-9));
    // CO over CO2 is that of the flame: 400 ppm by 11.7 % or so of CO2 without excess air (derived from methane's).
    const ratio = zone!.carbonMonoxidePpm! / zone!.carbonDioxidePpm!;
    expect(ratio).toBeGreaterThan(400 / 125_000);
    expect(ratio).toBeLessThan(400 / 115_000);
  });

  it('tells draft by outdoor temperature: colder draws more, and a cold flue falls in hot weather', () => {
    const rows = study.appliances[0]!.byTemperature[0]!.rows;
    expect(rows.map(({ hotPa }) => hotPa!)).toEqual(
      rows.map(({ hotPa }) => hotPa!).toSorted((a, b) => a - b),
    );
    expect(rows[0]!.coldPa!).toBeLessThan(0);
    expect(rows[2]!.coldPa!).toBeGreaterThan(0);
  });

  it('names appliances without a flue as not studied', async () => {
    const bare = house({ appliances: { stove: { kind: 'wood stove', vent: 'closed stove' } } });
    const found = await combustionStudy(bare, { worstCase: await worstCaseStudy(bare) });
    expect(found.appliances).toEqual([]);
    expect(found.notStudied).toEqual([{ appliance: 'stove', reason: 'no flue is described' }]);
  });
});
