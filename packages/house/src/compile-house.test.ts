import { linkReading, pressureAt, solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather } from './compile-house.js';
import type { CompiledHouse } from './compiled-house.js';
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
      -linkReading(made.network, balance, `leak/1/main/walls/@${face}/2`).massFlowKgPerS;
    expect(into('front')).toBeGreaterThan(0);
    expect(into('back')).toBeLessThan(0);
    expect(into('left')).toBeCloseTo(into('right'), 12);
  });
});

describe('parts in series', () => {
  const duct = {
    name: 'duct',
    law: { kind: 'orifice', areaM2: 0.02, dischargeCoefficient: 0.6 },
    riseM: 0,
  } as const;
  /** A fan that falls straight from 200 Pa at no flow to none at 0.2 m3/s, and on below it. */
  const law = {
    kind: 'fanCurve',
    points: [
      { volumeFlowM3PerS: -0.2, pressureRisePa: 400 },
      { volumeFlowM3PerS: 0.4, pressureRisePa: -200 },
    ],
    beyondShutOff: 'extended',
  } as const;
  const stoppedLaw = { kind: 'orifice', areaM2: 0.01, dischargeCoefficient: 0.6 } as const;
  const ducted = (path: Partial<NonNullable<Device['path']>>): Device =>
    constantExhaust('hood', 0.2, {
      speeds: [{ name: 'on', ratedFlowM3PerS: 0.2, law }],
      path: { before: [], after: [], stoppedLaw, ...path },
    });
  const leaky = { ...house, airtightness: { ...house.airtightness, exponent: 0.5 } };

  it('carry one flow: the fan’s rise makes up for the duct and the house', () => {
    const running = { hood: 'on' };
    const sealed = (path: Parameters<typeof ducted>[0]) => ({
      ...leaky,
      devices: [{ ...ducted(path), duringTest: 'sealed' } as const],
    });
    const after = solved(sealed({ after: [duct] }), { running });
    const before = solved(sealed({ before: [duct] }), { running });
    const flowOf = ({ house: made, balance }: typeof after): number =>
      linkReading(made.network, balance, 'device/hood/on').volumeFlowM3PerS;
    // Q = 0.2 (1 - rise / 200), rise = 0.6^-2 rho Q^2 / (2 A^2) + 50 (Q / 0.1)^2, by hand.
    const loss = 1.2041 / (2 * (0.6 * 0.02) ** 2) + 50 / 0.1 ** 2;
    const expected = (-1000 + Math.sqrt(1000 ** 2 + 4 * loss * 200)) / (2 * loss);
    // The leaks take the air at outdoor density, which differs by 4e-5.
    expect(flowOf(after)).toBeCloseTo(expected, 5);
    expect(flowOf(before)).toBeCloseTo(expected, 5);
    expect(after.house.junctions).toMatchObject([{ id: '@junction hood 1', item: 'hood' }]);
    expect(after.house.house.zones).toHaveLength(1);
  });

  it('let the warm air of a house rise through the duct of a fan that stands still', () => {
    const rising = { ...duct, riseM: 6 };
    const cold = { ...still, outdoorTemperatureC: -10 };
    const { house: made, balance } = solved(
      { ...leaky, devices: [ducted({ after: [rising] })] },
      { weather: cold },
    );
    const off = linkReading(made.network, balance, 'device off/hood/off');
    expect(off.massFlowKgPerS).toBeGreaterThan(0.01);
    const reading = linkReading(made.network, balance, 'part/hood/duct');
    expect(reading.massFlowKgPerS).toBeCloseTo(off.massFlowKgPerS, 9);
    // 6 m of column at (1.34137 - 1.20410) kg/m3 less what the house is below outdoors at the hood.
    const atHood = (balance.pressuresPa[0] ?? Number.NaN) + 0.13727 * 9.80665 * 1;
    const over = reading.pressureDifferencePa + off.pressureDifferencePa;
    expect(over).toBeCloseTo(atHood + 0.13727 * 9.80665 * 6, 3);
  });

  it('keep every junction tied while a damper is shut, and leak as the damper is said to', () => {
    const flap = {
      kind: 'oneWayDamper',
      coefficientM3PerSPaN: 0.1,
      exponent: 0.5,
      crackingPressurePa: 5,
    } as const;
    const closed = { kind: 'powerLaw', coefficientM3PerSPaN: 0.0005, exponent: 0.5 } as const;
    const damper = (part: object) => ({ name: 'damper', law: flap, riseM: 0, ...part });
    const fan = constantExhaust('fan', 0.05);
    const off = (part: object, running: Record<string, string>) =>
      solved(
        { ...leaky, devices: [ducted({ after: [damper(part), duct] }), fan] },
        { running: { fan: 'on', ...running } },
      );
    const flow = ({ house: made, balance }: ReturnType<typeof off>): number =>
      linkReading(made.network, balance, 'part/hood/duct').massFlowKgPerS;
    expect(flow(off({}, {}))).toBeCloseTo(0, 12);
    expect(flow(off({ closed: 'inside the tested leakage' }, {}))).toBeCloseTo(0, 12);
    expect(flow(off({ closed }, {}))).toBeLessThan(-0.001);
    expect(flow(off({ closed }, { hood: 'on' }))).toBeGreaterThan(0.05);
  });

  it('are taken off the test as one: a shut damper hides the duct behind it', () => {
    const closed = { kind: 'powerLaw', coefficientM3PerSPaN: 0.0005, exponent: 0.5 } as const;
    const damper = { name: 'damper', law: stoppedLaw, riseM: 0, closed } as const;
    const modelled = (device: Partial<Device>): number =>
      compiled({ ...house, devices: [{ ...ducted({ after: [damper, duct] }), ...device }] })
        .leakage[0]!.modelledFlowM3PerS;
    const share = (areas: readonly number[]) =>
      areas.reduce((sum, area) => sum + area ** -2, 0) ** -0.5;
    // The damper's coefficient as an area: C = 0.6 A sqrt(2 / rho).
    const shut = 0.0005 / (0.6 * Math.sqrt(2 / 1.2041));
    const flow = (areaM2: number): number => 0.6 * areaM2 * Math.sqrt((2 * 50) / 1.2041);
    expect(modelled({})).toBeCloseTo(flow(share([0.01, shut, 0.02])), 8);
    expect(modelled({ duringTest: 'open' })).toBeCloseTo(flow(share([0.01, 0.01, 0.02])), 8);
    expect(modelled({ duringTest: 'sealed' })).toBe(0);
  });

  it('open a damper with another driver than the device', () => {
    const damper = { name: 'damper', law: stoppedLaw, riseM: 0, closed: stoppedLaw } as const;
    const driven = {
      ...house,
      devices: [
        { ...ducted({ after: [damper] }), damperOpensWith: { driver: 'fan' } },
        constantExhaust('fan', 0.05),
      ],
    };
    const open = (running: Record<string, string>): readonly string[] => [
      ...followInterlocks(driven, { running, doors: {} }).openDampers,
    ];
    expect(open({ hood: 'on' })).toEqual([]);
    expect(open({ fan: 'on' })).toEqual(['hood', 'fan']);
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
