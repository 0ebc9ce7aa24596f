import { referenceAir } from '@evendraft/airflow';
import { solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather } from './compile-house.js';
import { columnDensities } from './compile/column-densities.js';
import { followInterlocks } from './compile/followed-state.js';
import { seriesFlow } from './compile/series-flow.js';
import type { CompiledHouse } from './compiled-house.js';
import type { House } from './house.js';
import { baselineOf, countOperatingStates } from './operating-states.js';
import { parseHouse } from './parse-house.js';
import { stateLabel } from './state-label.js';

const heater = {
  vent: 'natural draft',
  fuel: 'gas',
  input: '12 kW',
  flue: {
    height: '6 m',
    diameter: '100 mm',
    collarHeight: '1.5 m',
    connector: { length: '1 m', rise: '0.5 m', elbows: 1 },
    draftHood: { reliefArea: '120 cm2' },
    duringTest: 'sealed',
  },
};

function house(appliances: object, more: object = {}): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Cedar Gate 4',
    floorArea: '120 m2',
    airtightness: { result: '250 L/s at 50 Pa', direction: 'depressurized' },
    weather: [{ name: 'cold', outdoorTemperature: '0 C', wind: 'calm' }],
    appliances,
    ...more,
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

function compiled(of: House): CompiledHouse {
  const result = compileHouse(of);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.compiled;
}

function solved(
  of: CompiledHouse,
  situation: {
    readonly firing?: Readonly<Record<string, string>>;
    readonly running?: Readonly<Record<string, string>>;
    readonly columns?: readonly ('upward' | 'downward')[];
  },
) {
  const { firing = {}, running = {}, columns = [] } = situation;
  const state = { running, doors: {}, firing };
  const weather = houseWeather(of.house, of.house.weathers[0]!);
  const { scenario } = houseScenario(of, { state, weather, airtightnessCase: 0, columns });
  const balance = solveNetwork(of.network, scenario);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  /** Mass flow of a part of a flue while it is there. */
  const flow = (id: string, part: string): number =>
    of.links.reduce((sum, { role }, i) => {
      const is = role.kind === 'flue' && role.id === id && role.part === part;
      return is && scenario.linkScale?.[i] === 1 ? sum + balance.links.massFlowKgPerS[i]! : sum;
    }, 0);
  const column = (link: number) => columnDensities(of, { state, weather })[link]!;
  return { balance, scenario, flow, column };
}

describe('the flue of an appliance with a draft hood', () => {
  const made = compiled(house({ 'water heater': heater }));

  it('is an opening of the house while the appliance is off', () => {
    const { flow, column } = solved(made, {});
    expect(made.twoStateLinks).toHaveLength(1);
    // Air of 20 °C rises, 1.2041 kg/m3; air of 0 °C falls, 1.2922 kg/m3.
    expect(column(0).upward).toBeCloseTo(1.2041, 3);
    expect(column(0).downward).toBeCloseTo(1.2922, 3);
    expect(flow('water heater', 'gas')).toBe(0);
    expect(flow('water heater', 'vent')).toBeGreaterThan(0);
    expect(flow('water heater', 'vent')).toBeCloseTo(flow('water heater', 'draft hood'), 9);
  });

  it('takes burner gas and room air up while it fires and draws', () => {
    const { flow, column } = solved(made, { firing: { 'water heater': 'firing' } });
    const gas = flow('water heater', 'gas');
    // Natural gas at 8 % CO2 gives some 0.46 kg/s of gas a megawatt (derived from its composition).
    expect(gas / 0.012).toBeGreaterThan(0.4);
    expect(gas / 0.012).toBeLessThan(0.52);
    expect(flow('water heater', 'draft hood')).toBeGreaterThan(0);
    expect(flow('water heater', 'vent')).toBeCloseTo(gas + flow('water heater', 'draft hood'), 9);
    // Gas of some 100 to 170 °C on its way up.
    expect(column(0).upward).toBeGreaterThan(0.78);
    expect(column(0).upward).toBeLessThan(0.95);
  });

  it('spills all its gas where air comes down', () => {
    const fan = {
      exhaust: { fan: { kind: 'bath fan', flow: '120 L/s', constantFlow: { upTo: '500 Pa' } } },
    };
    const { flow } = solved(compiled(house({ 'water heater': heater }, fan)), {
      firing: { 'water heater': 'firing' },
      running: { fan: 'on' },
      columns: ['downward'],
    });
    expect(flow('water heater', 'vent')).toBeLessThan(0);
    expect(-flow('water heater', 'draft hood')).toBeGreaterThan(flow('water heater', 'gas'));
  });

  it('stands warm at one temperature', () => {
    const { column } = solved(made, { firing: { 'water heater': 'standing warm' } });
    // Air of 40 °C at 101,325 Pa (derived, R 287.055).
    expect(column(0).upward).toBeCloseTo(101325 / (287.055 * 313.15), 6);
  });

  it('is closed by a vent damper while it does not fire', () => {
    const damped = compiled(house({ 'water heater': { ...heater, ventDamper: true } }));
    expect(solved(damped, {}).flow('water heater', 'vent')).toBe(0);
    const firing = { 'water heater': 'firing' };
    expect(solved(damped, { firing }).flow('water heater', 'vent')).toBeGreaterThan(0);
  });

  it('changes neither the states that are studied nor the baseline', () => {
    const read = made.house;
    expect(countOperatingStates(read)).toBe(1);
    const state = { running: {}, doors: {}, firing: { 'water heater': 'firing' } };
    expect(baselineOf(state)).toEqual({ running: {}, doors: {} });
    expect(stateLabel(read, state)).toBe('water heater firing');
  });

  it('is taken off the tested leakage where it was not sealed', () => {
    const open = compiled(
      house({ 'water heater': { ...heater, flue: { ...heater.flue, duringTest: 'open' } } }),
    );
    const law = (part: string) =>
      open.links.find(({ role }) => role.kind === 'flue' && role.part === part)!.description.law;
    const series = seriesFlow([{ law: law('vent') }, { law: law('draft hood') }], 50);
    const modelled = open.leakage[0]!.modelledFlowM3PerS;
    // Two ways to the same number: a network solve, and bisection over the laws in series.
    expect(modelled).toBeCloseTo(series / referenceAir.densityKgPerM3, 6);
    expect(modelled).toBeGreaterThan(0.01);
    expect(made.leakage[0]!.modelledFlowM3PerS).toBe(0);
  });

  it('gives the chimney that limits ask for', () => {
    expect(made.house.appliances[0]?.chimney).toEqual({ heightM: 6, exterior: false });
  });
});

describe('two appliances on one vent', () => {
  const joined = {
    diameter: '80 mm',
    connector: { length: '1 m', rise: '0.3 m' },
    duringTest: 'sealed',
  };
  const made = compiled(
    house({
      furnace: {
        ...heater,
        input: '25 kW',
        flue: { ...heater.flue, diameter: '150 mm', draftHood: { reliefArea: '250 cm2' } },
      },
      'water heater': { ...heater, sharesVentWith: 'furnace', flue: joined },
    }),
  );

  it('meet in a junction where their connectors end', () => {
    const [, waterHeater] = made.house.appliances;
    expect(waterHeater?.flue).toMatchObject({ joins: 'furnace', chimney: [] });
    // The furnace's connector ends 2.0 m above the floor; this one rises 0.3 m to it.
    expect(waterHeater?.flue?.collarHeightM).toBeCloseTo(1.7, 12);
    expect(made.junctions).toHaveLength(3);
    expect(made.twoStateLinks).toHaveLength(3);
  });

  it('draw through both draft hoods while one fires', () => {
    const { flow, column, balance } = solved(made, { firing: { furnace: 'firing' } });
    expect(flow('furnace', 'gas')).toBeGreaterThan(0);
    expect(flow('water heater', 'gas')).toBe(0);
    expect(flow('water heater', 'draft hood')).toBeGreaterThan(0);
    expect(flow('furnace', 'chimney')).toBeCloseTo(
      flow('furnace', 'vent') + flow('water heater', 'vent'),
      9,
    );
    // The chimney and the furnace's connector are warm, that of the idle heater holds room air.
    const of = (id: string, part: string) =>
      column(
        made.twoStateLinks.findIndex(({ index }) => {
          const { role } = made.links[index]!;
          return role.kind === 'flue' && role.id === id && role.part === part;
        }),
      ).upward;
    expect(of('furnace', 'vent')).toBeLessThan(of('furnace', 'chimney'));
    expect(of('furnace', 'chimney')).toBeLessThan(1);
    expect(of('water heater', 'vent')).toBeCloseTo(1.2041, 3);
    expect(balance.proof.largestRelativeResidual).toBeLessThan(1e-9);
  });

  it('warm one chimney more together than the smaller one alone', () => {
    const chimney = (firing: Readonly<Record<string, string>>) => {
      const { column } = solved(made, { firing });
      const index = made.twoStateLinks.findIndex(({ id }) => id.endsWith('chimney'));
      return column(index).upward;
    };
    const alone = chimney({ 'water heater': 'firing' });
    expect(chimney({ 'water heater': 'firing', furnace: 'firing' })).toBeLessThan(alone);
  });
});

describe('a hearth', () => {
  const hearth = (more: object) => ({
    hearth: {
      kind: 'fireplace',
      vent: 'open hearth',
      fuel: 'wood',
      flue: { height: '7 m', size: ['200 mm', '300 mm'], duringTest: 'sealed', ...more },
    },
  });

  it('burns in stages that draw what their flue draws', () => {
    const made = compiled(house(hearth({ damper: { shutArea: '20 cm2' } })));
    const drawn = (stage?: string) =>
      solved(made, stage === undefined ? {} : { firing: { hearth: stage } });
    const vent = (stage: string) => drawn(stage).flow('hearth', 'vent');
    expect(drawn().flow('hearth', 'vent')).toBe(0);
    expect(drawn().flow('hearth', 'shut vent')).toBeGreaterThan(0);
    expect(drawn().flow('hearth', 'shut vent')).toBeLessThan(vent('damper open') / 4);
    expect(vent('lighting')).toBeGreaterThan(vent('damper open'));
    expect(vent('full fire')).toBeGreaterThan(vent('lighting'));
    expect(vent('full fire')).toBeGreaterThan(vent('burn-down'));
  });

  it('with doors draws less with them shut', () => {
    const made = compiled(house(hearth({ shutOpening: '60 cm2' })));
    const drawn = (stage: string) => solved(made, { firing: { hearth: stage } });
    const open = drawn('full fire').flow('hearth', 'opening');
    const shut = drawn('full fire, doors shut').flow('hearth', 'shut opening');
    expect(drawn('full fire, doors shut').flow('hearth', 'opening')).toBe(0);
    expect(shut).toBeLessThan(open / 3);
  });

  it('opens its own air kit while it burns', () => {
    const kit = {
      makeUp: {
        kit: { opensWith: { device: 'hearth', speeds: ['full fire'] }, diameter: '100 mm' },
      },
    };
    const read = house(hearth({}), kit);
    const opened = (stage: string) =>
      followInterlocks(read, { running: {}, doors: {}, firing: { hearth: stage } }).openMakeUp;
    expect(opened('full fire').has('kit')).toBe(true);
    expect(opened('burn-down').has('kit')).toBe(false);
  });
});

describe('a wood stove', () => {
  it('takes its air through its controls, and through its door when that is open', () => {
    const made = compiled(
      house({
        stove: {
          kind: 'wood stove',
          vent: 'closed stove',
          fuel: 'wood',
          flue: { height: '6 m', diameter: '150 mm', duringTest: 'sealed' },
        },
      }),
    );
    const drawn = (stage: string) =>
      solved(made, { firing: { stove: stage } }).flow('stove', 'vent');
    expect(drawn('full fire')).toBeGreaterThan(0);
    expect(drawn('full fire, door open')).toBeGreaterThan(5 * drawn('full fire'));
  });
});

describe('a fan-assisted furnace', () => {
  it('holds its gas flow while it fires and lets room air through while it is off', () => {
    const made = compiled(
      house({
        furnace: {
          vent: 'fan assisted',
          fuel: 'gas',
          input: '20 kW',
          flue: { height: '6 m', diameter: '125 mm', duringTest: 'sealed' },
        },
      }),
    );
    expect(solved(made, {}).flow('furnace', 'appliance')).toBeGreaterThan(0);
    const firing = solved(made, { firing: { furnace: 'firing' } });
    expect(firing.flow('furnace', 'appliance')).toBe(0);
    expect(firing.flow('furnace', 'vent')).toBeCloseTo(firing.flow('furnace', 'gas'), 9);
  });
});
