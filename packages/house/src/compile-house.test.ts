import { linkReading, pressureAt, solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather, type CompiledHouse } from './compile-house.js';
import { followInterlocks } from './compile/followed-state.js';
import type { Device, House, Weather } from './house.js';
import { baselineOf, countOperatingStates, operatingStates } from './operating-states.js';
import { stateLabel } from './state-label.js';

const still: Weather = {
  name: 'still',
  origin: 'weather.0',
  outdoorTemperatureC: 20,
  windSpeedMPerS: 0,
  windFromDeg: 0,
};

const house: House = {
  name: 'invented',
  floorAreaM2: 100,
  volumeM3: 250,
  altitudeM: 0,
  frontFacesDeg: 0,
  sideRatio: 1,
  zones: [
    {
      id: 'main',
      origin: 'zones.main',
      kind: 'living',
      floorHeightM: 0,
      heightM: 2.5,
      volumeM3: 250,
      temperatureC: 20,
    },
  ],
  surroundings: [],
  airtightness: {
    origin: 'airtightness',
    exponent: 0.65,
    cases: [{ name: 'tested', volumeFlowM3PerS: 0.1, pressurePa: 50 }],
    guarded: false,
    direction: 'not stated',
  },
  leakShares: [
    { origin: 'leakage', zone: 'main', surface: 'walls', to: { kind: 'outdoors' }, share: 0.7 },
    { origin: 'leakage', zone: 'main', surface: 'ceiling', to: { kind: 'outdoors' }, share: 0.3 },
  ],
  openings: [],
  doors: [],
  devices: [],
  makeUpOpenings: [],
  ventilators: [],
  appliances: [],
  weathers: [still],
  assumptions: [],
  digest: 'sha256:none',
};

function constantExhaust(id: string, flowM3PerS: number, more: Partial<Device> = {}): Device {
  return {
    id,
    origin: `exhaust.${id}`,
    kind: 'exhaust fan',
    direction: 'exhaust',
    zone: 'main',
    to: { kind: 'outdoors' },
    heightM: 1,
    speeds: [
      {
        name: 'on',
        ratedFlowM3PerS: flowM3PerS,
        law: { kind: 'fixedFlow', volumeFlowM3PerS: flowM3PerS },
      },
    ],
    duringTest: 'closed',
    continuous: false,
    ...more,
  };
}

function compiled(of: House): CompiledHouse {
  const result = compileHouse(of);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.compiled;
}

function solved(
  of: House,
  situation: { running?: Record<string, string>; weather?: Weather; airtightnessCase?: number },
) {
  const house = compiled(of);
  const { running = {}, weather = still, airtightnessCase = 0 } = situation;
  const { scenario } = houseScenario(house, {
    state: { running, doors: {} },
    weather: houseWeather(of, weather),
    airtightnessCase,
  });
  const balance = solveNetwork(house.network, scenario);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  return { house, balance, scenario };
}

describe('a house as a network', () => {
  it('stands at the test pressure when a fan moves the tested flow', () => {
    const { balance } = solved(
      { ...house, devices: [constantExhaust('fan', 0.1)] },
      { running: { fan: 'on' } },
    );
    // Air enters at the reference state to 4e-5, which is what separates the two densities at 20 °C.
    expect(balance.pressuresPa[0]).toBeCloseTo(-50, 2);
  });

  it('stands at outdoor pressure with everything off in still weather of room temperature', () => {
    const { balance } = solved({ ...house, devices: [constantExhaust('fan', 0.1)] }, {});
    expect(Math.abs(balance.pressuresPa[0] ?? Number.NaN)).toBeLessThan(1e-6);
  });

  it('takes an unsealed opening off the tested leakage, at the test pressure', () => {
    const opening = {
      id: 'grille',
      origin: 'openings.grille',
      zone: 'main',
      to: { kind: 'outdoors' },
      heightM: 0,
      law: { kind: 'powerLaw', coefficientM3PerSPaN: 0.04 / 50 ** 0.5, exponent: 0.5 },
      duringTest: 'open',
    } as const;
    const fan = constantExhaust('fan', 0.1);
    const running = { fan: 'on' };
    const unsealed = solved({ ...house, devices: [fan], openings: [opening] }, { running });
    expect(unsealed.balance.pressuresPa[0]).toBeCloseTo(-50, 2);
    expect(unsealed.house.leakage[0]?.modelledFlowM3PerS).toBeCloseTo(0.04, 6);
    const sealed = solved(
      { ...house, devices: [fan], openings: [{ ...opening, duringTest: 'sealed' }] },
      { running },
    );
    expect(sealed.balance.pressuresPa[0]).toBeGreaterThan(-40);
  });

  it('is refused where modelled openings carry all that the test measured', () => {
    const law = { kind: 'powerLaw', coefficientM3PerSPaN: 0.1, exponent: 0.5 } as const;
    const result = compileHouse({
      ...house,
      openings: [
        {
          id: 'hole',
          origin: 'openings.hole',
          zone: 'main',
          to: { kind: 'outdoors' },
          heightM: 0,
          law,
          duringTest: 'open',
        },
      ],
    });
    expect(result.ok ? [] : result.issues.map((issue) => issue.code)).toEqual([
      'airtightness.nothing-left',
    ]);
  });

  it('is refused with a reason where it has no weather or no airtightness', () => {
    const reasons = [
      { ...house, weathers: [] },
      { ...house, airtightness: { ...house.airtightness, cases: [] } },
    ].map((each) => {
      const result = compileHouse(each);
      return result.ok ? [] : result.issues.map(({ code, path }) => [code, ...path]);
    });
    expect(reasons).toEqual([
      [['house.not-a-network', 'weather']],
      [['house.not-a-network', 'airtightness']],
    ]);
  });

  it('runs the loose end of a plan as a factor on the leaks', () => {
    const planned: House = {
      ...house,
      devices: [constantExhaust('fan', 0.1)],
      airtightness: {
        ...house.airtightness,
        cases: [
          { name: 'tight end', volumeFlowM3PerS: 0.1, pressurePa: 50 },
          { name: 'loose end', volumeFlowM3PerS: 0.4, pressurePa: 50 },
        ],
      },
    };
    const running = { fan: 'on' };
    const tight = solved(planned, { running }).balance.pressuresPa[0];
    const loose = solved(planned, { running, airtightnessCase: 1 }).balance.pressuresPa[0];
    expect(tight).toBeCloseTo(-50, 2);
    // dP = 50 (Q / Q50)^(1/n)
    expect(loose).toBeCloseTo(-50 * 0.25 ** (1 / 0.65), 3);
  });

  it('has the stack pressure of a cold day: suction low, pressure high, none at the neutral level', () => {
    const cold = { ...still, outdoorTemperatureC: -10 };
    const { house: made, balance, scenario } = solved(house, { weather: cold });
    const at = (heightM: number): number =>
      pressureAt(made.network, balance, { zoneId: 'main', heightM, scenario });
    expect(at(0)).toBeLessThan(0);
    expect(at(2.5)).toBeGreaterThan(0);
    // (rho_out - rho_in) g H with 1.34137 and 1.20410 kg/m3, dry air at 101,325 Pa (derived).
    expect(at(2.5) - at(0)).toBeCloseTo(0.13727 * 9.80665 * 2.5, 3);
  });

  it('puts the windward face above and the lee below the undisturbed pressure', () => {
    const windy = { ...still, windSpeedMPerS: 6, windFromDeg: 0 };
    const { house: made, balance } = solved(house, { weather: windy });
    const into = (face: string): number =>
      -linkReading(made.network, balance, `leak main walls @${face} 2`).massFlowKgPerS;
    expect(into('front')).toBeGreaterThan(0);
    expect(into('back')).toBeLessThan(0);
    expect(into('left')).toBeCloseTo(into('right'), 12);
  });
});

describe('operating states', () => {
  const speeds = ['low', 'high'].map((name) => ({
    name,
    ratedFlowM3PerS: 0.1,
    law: { kind: 'fixedFlow', volumeFlowM3PerS: 0.1 } as const,
  }));
  const many: House = {
    ...house,
    devices: [
      constantExhaust('hood', 0.1, { speeds }),
      constantExhaust('dryer', 0.05),
      constantExhaust('fresh air', 0.02, { continuous: true }),
      constantExhaust('booster', 0.02, { interlock: { driver: 'dryer' } }),
      constantExhaust('relay', 0.02, { interlock: { driver: 'booster' } }),
    ],
    makeUpOpenings: [
      {
        id: 'make-up',
        origin: 'makeUp.make-up',
        zone: 'main',
        to: { kind: 'outdoors' },
        heightM: 0,
        openLaw: { kind: 'orifice', areaM2: 0.02, dischargeCoefficient: 0.6 },
        duringTest: 'closed',
        interlock: { driver: 'hood', speeds: ['high'] },
      },
    ],
  };

  it('are every speed of every switched device; continuous and interlocked ones are no choice', () => {
    const states = operatingStates(many);
    expect(states).toHaveLength(3 * 2);
    expect(countOperatingStates(many)).toBe(6);
    expect(states.map((state) => stateLabel(many, state))).toEqual([
      'fresh air',
      'dryer + fresh air',
      'hood low + fresh air',
      'hood low + dryer + fresh air',
      'hood high + fresh air',
      'hood high + dryer + fresh air',
    ]);
    expect(baselineOf(states[5]!).running).toEqual({});
  });

  it('let interlocks follow along a chain, at the named speeds only', () => {
    const follow = (running: Record<string, string>) =>
      followInterlocks(many, { running, doors: {} });
    expect([...follow({ dryer: 'on' }).running.keys()]).toEqual(['dryer', 'booster', 'relay']);
    expect(follow({ hood: 'low' }).openMakeUp.has('make-up')).toBe(false);
    expect(follow({ hood: 'high' }).openMakeUp.has('make-up')).toBe(true);
  });
});
