import { solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather } from './compile-house.js';
import type { CompiledHouse } from './compiled-house.js';
import type { House } from './house.js';
import { operatingStates } from './operating-states.js';
import { parseHouse } from './parse-house.js';
import { stateLabel } from './state-label.js';

function house(handler: object, more: object = {}): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Willow Yard 6',
    floorArea: '150 m2',
    airtightness: { result: '300 L/s at 50 Pa', direction: 'depressurized' },
    weather: [{ name: 'still', outdoorTemperature: '20 C', wind: 'calm' }],
    zones: {
      main: { kind: 'living', area: '110 m2', leakage: { walls: '90 %' } },
      bedroom: { area: '40 m2', leakage: { walls: '10 %' } },
    },
    doors: { door: { between: ['main', 'bedroom'], undercut: '100 cm2' } },
    forcedAir: { handler: { flow: '400 L/s', supplies: 'main', returns: 'main', ...handler } },
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

function solved(of: CompiledHouse, running: Record<string, string>) {
  const { scenario } = houseScenario(of, {
    state: { running, doors: { door: 'shut' } },
    weather: houseWeather(of.house, of.house.weathers[0]!),
    airtightnessCase: 0,
  });
  const balance = solveNetwork(of.network, scenario);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  const flow = (part: string): number => {
    const index = of.links.findIndex(({ role }) => role.kind === 'part' && role.part === part);
    return balance.links.volumeFlowM3PerS[index]!;
  };
  return { pressures: Array.from(balance.pressuresPa), flow };
}

const running = { handler: 'on' };

describe('an air handler', () => {
  it('is switched like a device', () => {
    const read = house({});
    const labels = operatingStates(read).map((state) => stateLabel(read, state));
    expect(labels.slice(0, 2)).toEqual(['everything off; door open', 'handler; door open']);
    expect(operatingStates(house({ continuous: true }))).toHaveLength(2);
  });

  it('leaves a house of tight ducts as it was', () => {
    const { pressures, flow } = solved(compiled(house({})), running);
    expect(Math.abs(pressures[0]!)).toBeLessThan(1e-6);
    // The reference air of the laws has its density to five digits.
    expect(flow('supply main')).toBeCloseTo(0.4, 6);
    expect(flow('return main')).toBeCloseTo(0.4, 6);
  });

  it('holds the given pressure in its ducts at the given shares', () => {
    const held = { constantFlow: { upTo: '200 Pa' } };
    const tight = { supplies: { main: '75 %', bedroom: '25 %' }, ...held };
    const { pressures, flow } = solved(compiled(house(tight)), running);
    const [main, bedroom, back, supply] = pressures as [number, number, number, number];
    // The reference air of the laws has its density to five digits.
    expect(main - back).toBeCloseTo(25, 3);
    // More pressure in the bedroom leaves it with a little less than its share.
    expect(bedroom).toBeGreaterThan(3);
    expect(flow('supply bedroom')).toBeLessThan(0.1);
    expect(flow('supply bedroom') / 0.1).toBeCloseTo(Math.sqrt((supply - bedroom) / 25), 4);
  });

  it('moves less against shut doors, by a parabola through its flow and its shut-off', () => {
    const { pressures, flow } = solved(
      compiled(house({ supplies: 'bedroom', returns: 'main', shutOffPressure: '350 Pa' })),
      running,
    );
    const [, , back, supply] = pressures as [number, number, number, number];
    const risePa = supply - back;
    expect(risePa).toBeGreaterThan(150);
    // rise = 350 − (350 − 50) (Q/0.4)²; the points of the curve lie within 0.5 % of the free flow.
    const byHand = 0.4 * Math.sqrt((350 - risePa) / (350 - 50));
    expect(Math.abs(flow('supply bedroom') - byHand)).toBeLessThan(0.002);
    expect(byHand).toBeLessThan(0.35);
  });

  it('under a control holds its flow up to the pressure given and then gives way', () => {
    const flows = ['2000 Pa', '150 Pa'].map((upTo) => {
      const only = { supplies: 'bedroom', returns: 'main', constantFlow: { upTo } };
      return solved(compiled(house(only)), running).flow('supply bedroom');
    });
    // The reference air of the laws has its density to five digits.
    expect(flows[0]).toBeCloseTo(0.4, 4);
    expect(flows[1]).toBeLessThan(0.35);
  });

  it('lists the shut-off of its blower where none is given, twice the pressures of strong ducts', () => {
    const shutOff = (handler: object): unknown =>
      house(handler).assumptions.find(({ what }) =>
        what.startsWith('shut-off pressure of its blower'),
      )?.value;
    expect(shutOff({})).toMatchObject({ si: 350 });
    expect(shutOff({ supplyPressure: '200 Pa' })).toMatchObject({ si: 450 });
    expect(shutOff({ shutOffPressure: '300 Pa' })).toBeUndefined();
  });

  it('presses a room with a supply and no return, and sucks the rest of the house', () => {
    const { pressures } = solved(
      compiled(house({ supplies: { main: '75 %', bedroom: '25 %' } })),
      running,
    );
    expect(pressures[1]).toBeGreaterThan(0);
    expect(pressures[0]).toBeLessThan(0);
  });

  it('sucks the house by what its supply ducts lose to outdoors', () => {
    const { pressures, flow } = solved(
      compiled(house({ supplyLeakage: { share: '10 %', to: 'outdoors' }, duringTest: 'sealed' })),
      running,
    );
    const lost = flow('supply leak 1');
    // Ten percent of 400 L/s at 25 Pa; it loses a little less from a house under suction.
    expect(lost).toBeLessThan(0.04);
    expect(lost).toBeGreaterThan(0.036);
    // All of it comes back in through the leaks: Q = 0.3 (dP/50)^0.65, nine tenths of it through the main zone's.
    const suction = -pressures[0]!;
    expect(0.9 * 0.3 * (suction / 50) ** 0.65).toBeLessThan(lost);
    expect(0.3 * (suction / 50) ** 0.65).toBeGreaterThan(lost * 0.97);
  });

  it('presses the house by what its return ducts draw from outdoors', () => {
    const { pressures } = solved(
      compiled(house({ returnLeakage: { flow: '40 L/s at 25 Pa', to: 'outdoors' } })),
      running,
    );
    expect(pressures[0]).toBeGreaterThan(1);
  });

  it('that stands leaves its holes open: duct leaks are openings of the house', () => {
    const leaky = house(
      { supplyLeakage: { share: '10 %', to: 'outdoors' }, duringTest: 'sealed' },
      { exhaust: { fan: { kind: 'bath fan', flow: '100 L/s', constantFlow: { upTo: '500 Pa' } } } },
    );
    const tight = house(
      { duringTest: 'sealed' },
      { exhaust: { fan: { kind: 'bath fan', flow: '100 L/s', constantFlow: { upTo: '500 Pa' } } } },
    );
    const withLeak = solved(compiled(leaky), { fan: 'on' });
    const without = solved(compiled(tight), { fan: 'on' });
    expect(withLeak.flow('supply leak 1')).toBeLessThan(-0.01);
    expect(withLeak.pressures[0]).toBeGreaterThan(without.pressures[0]! + 1);
  });

  it('whose registers were open during the test takes its leaks off the tested leakage', () => {
    const leak = { supplyLeakage: { flow: '30 L/s at 50 Pa', to: 'outdoors' } };
    const modelled = (of: House) => compiled(of).leakage[0]!.modelledFlowM3PerS;
    // The registers and the standing handler take a few percent of the 50 Pa.
    expect(modelled(house(leak))).toBeGreaterThan(0.0295);
    expect(modelled(house(leak))).toBeLessThan(0.03);
    expect(modelled(house({ ...leak, duringTest: 'sealed' }))).toBe(0);
  });
});

describe('a forced-air system in which nothing balances during the airtightness test', () => {
  it('is named, and never counts as a flow of zero', () => {
    const good = house({ duringTest: 'open' });
    const [system] = good.forcedAir!;
    const held = { kind: 'fixedFlow', volumeFlowM3PerS: 0.1 } as const;
    const supplies = system!.supplies.map((each) => ({ ...each, law: held }));
    const bad = {
      ...good,
      forcedAir: [
        { ...system!, supplies, leaks: [], standingLaw: { ...held, volumeFlowM3PerS: 0.2 } },
      ],
    };
    expect(compileHouse(bad)).toMatchObject({
      ok: false,
      issues: [{ code: 'airtightness.flow-unknown', parameters: { item: 'handler' } }],
    });
  });
});
