import { linkReading, solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather } from '../compile-house.js';
import type { House } from '../house.js';
import { countOperatingStates, operatingStates } from '../operating-states.js';
import { parseHouse } from '../parse-house.js';
import { stateLabel } from '../state-label.js';

const file = {
  evendraft: 1,
  name: 'Synthetic',
  floorArea: '200 m2',
  ceilingHeight: '2.5 m',
  airtightness: '60 L/s at 50 Pa',
  exhaust: { fan: { kind: 'exhaust fan', flow: '100 L/s', constantFlow: { upTo: '2000 Pa' } } },
  weather: [{ name: 'still', outdoorTemperature: '20 C', wind: 'calm' }],
};

function read(parts: object): House {
  const result = parseHouse({ ...file, ...parts });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

/** Suction of the house and inward flow through one link. */
function run(house: House, link: string, doors: Record<string, 'open' | 'shut'> = {}) {
  const result = compileHouse(house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const { compiled } = result;
  const { scenario } = houseScenario(compiled, {
    state: { running: { fan: 'on' }, doors },
    weather: houseWeather(house, house.weathers[0]!),
    airtightnessCase: 0,
  });
  const balance = solveNetwork(compiled.network, scenario);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  const flow = linkReading(compiled.network, balance, link).volumeFlowM3PerS;
  return { flow, suctionPa: -(balance.pressuresPa[0] ?? Number.NaN) };
}

describe('a make-up opening behind a duct', () => {
  const duct = { diameter: '200 mm', length: '0 m', entry: { loss: 1 }, exit: { loss: 1.5 } };
  const makeUp = (keys: object) =>
    read({ makeUp: { inlet: { opensWith: 'fan', duringTest: 'sealed', duct, ...keys } } });

  it('takes the losses of its duct and its open damper together', () => {
    const { flow, suctionPa } = run(
      makeUp({ damper: { kind: 'motorized', loss: 1.5 } }),
      'make-up/inlet/open',
    );
    // P = (1 + 1.5 + 1.5) rho v2 / 2 in the duct's area; the link counts outwards.
    const speed = -flow / ((Math.PI / 4) * 0.2 ** 2);
    expect(4 * 0.5 * 1.2041 * speed ** 2).toBeCloseTo(suctionPa, 3);
  });

  it('stays shut when its damper is stuck, and open when it is stuck so', () => {
    const damper = { kind: 'motorized', leakageClass: 'AMCA 1' };
    const shut = run(makeUp({ damper: { ...damper, stuck: 'shut' } }), 'make-up/inlet/open');
    // The leaks alone carry the fan: 50 Pa (100 / 60)^(1 / 0.65), less what the shut damper leaks.
    expect(shut.suctionPa).toBeGreaterThan(0.95 * 50 * (100 / 60) ** (1 / 0.65));
    const [inlet] = makeUp({ damper: { kind: 'motorized', stuck: 'open' } }).makeUpOpenings;
    expect(inlet?.closedLaw).toEqual(inlet?.openLaw);
  });

  it('carries its hood, its face area and the duct of an area beside it', () => {
    const [plenum] = makeUp({
      area: '300 cm2',
      throughHood: 'fan',
      faceArea: '0.15 m2',
    }).makeUpOpenings;
    expect(plenum).toMatchObject({
      openLaw: { kind: 'orifice', areaM2: 0.03 },
      parts: [{ name: 'duct' }],
      throughHood: 'fan',
      faceAreaM2: 0.15,
    });
  });
});

describe('an opening with a damper or a duct', () => {
  it('opens its barometric damper at its pressure, inwards only', () => {
    const inlet = (opensAt: string) =>
      read({
        openings: {
          inlet: {
            damper: { kind: 'barometric', diameter: '150 mm', opensAt, loss: 2 },
            duringTest: 'sealed',
          },
        },
      });
    const low = run(inlet('5 Pa'), 'opening/inlet/opening');
    // A flap counts its flow in the direction in which it opens.
    expect(low.flow).toBeGreaterThan(0.01);
    expect(low.suctionPa).toBeGreaterThan(5);
    expect(run(inlet('20 Pa'), 'opening/inlet/opening').suctionPa).toBeGreaterThan(low.suctionPa);
  });

  it('counts a barometric inlet that was left unsealed as open in a depressurization test', () => {
    const compiled = (keys: object) => {
      const inlet = { damper: { kind: 'barometric', diameter: '60 mm', loss: 2 }, ...keys };
      const result = compileHouse(read({ openings: { inlet } }));
      return result.ok ? result.compiled.leakage[0]?.modelledFlowM3PerS : undefined;
    };
    // Fully open at 20 Pa: v = sqrt(2 * 50 / (2 rho)) in an area of 28.3 cm2, and the leak of the gap beside it.
    const open = (Math.PI / 4) * 0.06 ** 2 * Math.sqrt(50 / 1.2041);
    expect(compiled({})).toBeGreaterThan(0.98 * open);
    expect(compiled({})).toBeLessThan(1.05 * open);
    expect(compiled({ duringTest: 'sealed' })).toBe(0);
  });

  it('is a duct of its own, with its rise, where it is nothing else', () => {
    const [vent] = read({
      openings: { vent: { duct: { diameter: '100 mm', length: '3 m', rise: '-2 m' } } },
    }).openings;
    expect(vent).toMatchObject({ law: { kind: 'duct' }, riseM: -2 });
    expect(vent).not.toHaveProperty('parts');
  });
});

describe('a window', () => {
  const window = { area: '0.3 m2', to: 'back', positions: ['open', 'shut'] };

  it('is a choice of states, named in them, and shut in the baseline', () => {
    const house = read({ openings: { window } });
    expect(countOperatingStates(house)).toBe(4);
    expect(operatingStates(house).map((state) => stateLabel(house, state))).toEqual([
      'everything off; window open',
      'fan; window open',
      'everything off; window shut',
      'fan; window shut',
    ]);
    expect(house.openings[0]).toMatchObject({ baselinePosition: 'shut', duringTest: 'closed' });
  });

  it('passes air where it is open, and stands as in the baseline where nothing is said', () => {
    const house = read({ openings: { window } });
    const open = run(house, 'opening/window/opening', { window: 'open' });
    const shut = run(house, 'opening/window/opening', { window: 'shut' });
    expect(open.suctionPa).toBeLessThan(1);
    expect(shut.suctionPa).toBeGreaterThan(50);
    expect(run(house, 'opening/window/opening').suctionPa).toBe(shut.suctionPa);
  });
});

describe('devices that move no air in or out', () => {
  it('have no speed: what ends indoors', () => {
    const { devices, assumptions } = read({
      exhaust: { 'central vacuum': { flow: '50 L/s', to: 'indoors' } },
    });
    expect(devices[0]?.speeds).toEqual([]);
    expect(assumptions.map(({ what }) => what)).toContain('air that it moves in or out');
  });

  it('leave the house as it is where the attic fan draws from the attic', () => {
    const { devices } = read({
      zones: { main: { area: '200 m2' }, loft: { kind: 'attic', area: '100 m2' } },
      openings: { vents: { zone: 'loft', to: 'outdoors', area: '0.2 m2' } },
      exhaust: { 'attic fan': '300 L/s' },
    });
    expect(devices[0]).toMatchObject({ kind: 'attic fan', zone: 'loft' });
  });
});
