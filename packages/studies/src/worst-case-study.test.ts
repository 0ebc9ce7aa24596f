import { compileHouse, houseWeather, type CompiledHouse, type House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { balanceStudy } from './balance-study.js';
import { worstCaseStudy } from './worst-case-study.js';

const constantFlow = (volumeFlowM3PerS: number) =>
  ({ kind: 'fixedFlow', volumeFlowM3PerS }) as const;

/** Two rooms with a door between them; the exhaust stands in the tighter one. */
const house: House = {
  name: 'invented',
  floorAreaM2: 100,
  volumeM3: 250,
  altitudeM: 0,
  frontFacesDeg: 0,
  sideRatio: 1,
  zones: ['hall', 'utility'].map((id) => ({
    id,
    origin: `zones.${id}`,
    kind: 'living' as const,
    floorHeightM: 0,
    heightM: 2.5,
    volumeM3: 125,
    temperatureC: 20,
  })),
  surroundings: [],
  airtightness: {
    origin: 'airtightness',
    exponent: 0.65,
    cases: [{ name: 'tested', volumeFlowM3PerS: 0.2, pressurePa: 50 }],
    guarded: false,
    direction: 'not stated',
  },
  leakShares: [
    { origin: 'leakage', zone: 'hall', surface: 'walls', to: { kind: 'outdoors' }, share: 0.9 },
    { origin: 'leakage', zone: 'utility', surface: 'walls', to: { kind: 'outdoors' }, share: 0.1 },
  ],
  openings: [],
  doors: [
    {
      id: 'utility door',
      origin: 'doors.utility door',
      between: ['hall', 'utility'],
      shut: { kind: 'orifice', areaM2: 0.01, dischargeCoefficient: 0.6 },
      open: { kind: 'orifice', areaM2: 1.8, dischargeCoefficient: 0.6 },
      positions: ['open', 'shut'],
      baselinePosition: 'open',
    },
  ],
  devices: ['dryer', 'fan'].map((id, i) => ({
    id,
    origin: `exhaust.${id}`,
    kind: 'exhaust fan' as const,
    direction: 'exhaust' as const,
    zone: 'utility',
    to: { kind: 'outdoors' as const },
    heightM: 1,
    speeds: [{ name: 'on', ratedFlowM3PerS: 0.05, law: constantFlow(0.05 + 0.02 * i) }],
    duringTest: 'closed' as const,
    continuous: false,
  })),
  makeUpOpenings: [],
  ventilators: [],
  appliances: [
    {
      id: 'water heater',
      origin: 'appliances.water heater',
      kind: 'water heater',
      vent: 'natural draft',
      fuel: 'gas',
      zone: 'utility',
      sharesVentWith: [],
      ventDamper: false,
    },
  ],
  weathers: [
    {
      name: 'still',
      origin: 'weather.0',
      outdoorTemperatureC: 20,
      windSpeedMPerS: 0,
      windFromDeg: 0,
    },
    {
      name: 'cold',
      origin: 'weather.1',
      outdoorTemperatureC: -10,
      windSpeedMPerS: 0,
      windFromDeg: 0,
    },
  ],
  assumptions: [],
  digest: 'sha256:none',
};

function compiled(): CompiledHouse {
  const result = compileHouse(house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.compiled;
}

describe('the worst case', () => {
  it('goes through all states and weathers and lists the deepest first', async () => {
    const study = await worstCaseStudy(compiled());
    expect(study.counts).toEqual({ states: 8, weathers: 2, airtightnessCases: 1, solves: 16 + 4 });
    expect(study.unsolved).toEqual([]);
    const deepest = study.situations.map((s) => Math.min(...s.zones.map((z) => z.pressurePa)));
    // States within 1e-4 Pa tie and keep the order in which they were studied.
    const inTies = deepest.map((pressurePa) => Math.round(pressurePa / 1e-4));
    expect(inTies).toEqual([...inTies].sort((a, b) => a - b));
    expect(new Set(inTies).size).toBeGreaterThan(5);
    expect(study.situations[0]?.label).toBe('dryer + fan; utility door shut');
    expect(study.proof.notEnclosed).toBe(0);
  });

  it('finds for each zone what going through the list by hand finds', async () => {
    const study = await worstCaseStudy(compiled());
    for (const worst of study.zones) {
      const readings = study.situations.map((s) => s.zones.find((z) => z.zone === worst.zone)!);
      expect(worst.lowest.pressurePa).toBe(Math.min(...readings.map((z) => z.pressurePa)));
      expect(worst.largestFall.changeFromBaselinePa).toBe(
        Math.min(...readings.map((z) => z.changeFromBaselinePa)),
      );
    }
    expect(study.appliances.map((a) => [a.appliance, a.zone])).toEqual([
      ['water heater', 'utility'],
    ]);
  });

  it('keeps states that tie in the order in which they were studied', async () => {
    // Each of these fans is blocked at the suction that the first one makes, so that adding it changes nothing.
    const strong = { kind: 'fixedFlow', volumeFlowM3PerS: 0.1 } as const;
    const weak = {
      kind: 'fanCurve',
      points: [
        { pressureRisePa: 0.5, volumeFlowM3PerS: 0 },
        { pressureRisePa: 0, volumeFlowM3PerS: 0.01 },
      ],
      beyondShutOff: 'blocked',
    } as const;
    const [template] = house.devices;
    const devices = [strong, weak, weak].map((law, i) => ({
      ...template!,
      id: `fan ${i}`,
      speeds: [{ name: 'on', ratedFlowM3PerS: 0.1, law }],
    }));
    const result = compileHouse({ ...house, doors: house.doors.slice(0, 1), devices });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    const study = await worstCaseStudy(result.compiled);
    const tied = study.situations.filter(
      ({ weather, label }) => weather === 'still' && /^fan 0.*door shut$/.test(label),
    );
    expect(tied.map(({ label }) => label.split(';')[0])).toEqual([
      'fan 0',
      'fan 0 + fan 2',
      'fan 0 + fan 1',
      'fan 0 + fan 1 + fan 2',
    ]);
  });

  it('subtracts the baseline of the same doors and weather', async () => {
    const balance = balanceStudy(compiled(), {
      state: { running: {}, doors: { 'utility door': 'shut' } },
      weather: houseWeather(house, house.weathers[1]!),
    });
    if (balance.status !== 'solved') throw new Error(balance.hint);
    for (const zone of balance.zones) expect(zone.changeFromBaselinePa).toBe(0);
  });

  it('stops when asked, with the reason of the signal', async () => {
    const many = compiled();
    const weathers = Array.from({ length: 60 }, (_, i) => ({
      ...house.weathers[0]!,
      name: `weather ${i}`,
    }));
    const stop = new AbortController();
    const study = worstCaseStudy(
      { ...many, house: { ...house, weathers } },
      { signal: stop.signal, onProgress: () => stop.abort(new Error('enough')) },
    );
    await expect(study).rejects.toThrow('enough');
  });

  it('keeps what is done where a stop is to keep it, and says how much that is', async () => {
    const stop = new AbortController();
    const study = await worstCaseStudy(compiled(), {
      signal: stop.signal,
      whenStopped: 'keep',
      onProgress: (done) => {
        if (done === 5) stop.abort();
      },
    });
    const whole = await worstCaseStudy(compiled());
    expect(study.stopped).toEqual({ done: 5, of: whole.situations.length });
    expect(study.situations).toHaveLength(5);
    expect(whole.situations).toEqual(expect.arrayContaining([...study.situations]));
    expect(whole.stopped).toBeUndefined();
  });

  it('keeps the places that were searched where a stop is to keep them, without a proof', async () => {
    const stop = new AbortController();
    let blocks = 0;
    const study = await worstCaseStudy(compiled(), {
      signal: stop.signal,
      whenStopped: 'keep',
      listUpTo: 0,
      onProgress: () => {
        blocks += 1;
        if (blocks === 2) stop.abort();
      },
    });
    // Two weathers and two positions of a door make four places, each of two blocks, low and high.
    const { situations = 0, proved } = study.coverage ?? {};
    expect(proved).toBe(false);
    expect(study.stopped).toEqual({ done: situations / 4, of: situations });
    expect(new Set(study.situations.map(({ weather }) => weather)).size).toBe(1);
  });

  it('covers twenty switched fans, over a million states, with some hundred solves and a proof', async () => {
    const [template] = house.devices;
    const devices = Array.from({ length: 20 }, (_, i) => ({
      ...template!,
      id: `fan ${i}`,
      speeds: [
        {
          name: 'on',
          ratedFlowM3PerS: 0.02,
          law: { kind: 'fixedFlow', volumeFlowM3PerS: 0.02 } as const,
        },
      ],
    }));
    const result = compileHouse({ ...house, devices });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    const study = await worstCaseStudy(result.compiled);
    expect(study.coverage).toMatchObject({ proved: true, notOrdered: [] });
    expect(study.coverage!.situations).toBeGreaterThan(2 ** 20);
    expect(study.counts.solves).toBeLessThan(400);
    expect(study.zones[0]!.lowest.label.split(' + ')).toHaveLength(20);
  });
});
