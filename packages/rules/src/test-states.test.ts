import type { Door, House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { appliance, device, house } from '../test-data/invented-study.js';
import type { TestConfiguration } from './test-configuration.js';
import { testStates } from './test-states.js';
import { limitSets } from './limit-sets.js';

const door = (id: string): Door => ({
  id,
  origin: `doors.${id}`,
  between: ['basement', 'living room'],
  shut: { kind: 'orifice', areaM2: 0.01, dischargeCoefficient: 0.6 },
  open: { kind: 'orifice', areaM2: 1.6, dischargeCoefficient: 0.6 },
  positions: ['open', 'shut'],
  baselinePosition: 'open',
});

const configuration = (given: Partial<TestConfiguration>): TestConfiguration => ({
  id: 'test',
  words: 'A test.',
  exhaust: 'all',
  doors: 'as found',
  hearthDamper: 'not stated',
  airHandler: 'not stated',
  firing: 'nothing',
  baseline: 'everything off, same doors',
  source: { document: 'invented', status: 'memory' },
  ...given,
});

const states = (of: House, given: Partial<TestConfiguration>) =>
  testStates(of, { testConfigurations: [configuration(given)] });
const running = (of: House, given: Partial<TestConfiguration>) =>
  states(of, given)[0]?.state.running;

const fans = house({
  devices: [
    device({ id: 'bath fan', kind: 'bath fan', speeds: { on: 0.03 } }),
    device({ id: 'dryer', kind: 'dryer', speeds: { on: 0.07 } }),
    device({ id: 'hood', kind: 'hood', speeds: { low: 0.1, high: 0.4 } }),
    { ...device({ id: 'quiet fan', kind: 'exhaust fan', speeds: { on: 0.02 } }), continuous: true },
    device({ id: 'attic fan', kind: 'exhaust fan', speeds: { on: 0.08 } }),
    device({
      id: 'make-up fan',
      kind: 'supply fan',
      direction: 'supply',
      speeds: { on: 0.3 },
      interlock: { driver: 'hood' },
    }),
    device({ id: 'supply fan', kind: 'supply fan', direction: 'supply', speeds: { on: 0.05 } }),
  ],
});

describe('what runs in a test', () => {
  it.each<[TestConfiguration['exhaust'], Record<string, string>]>([
    ['none', { 'quiet fan': 'on' }],
    ['continuous only', { 'quiet fan': 'on' }],
    ['largest', { hood: 'high', 'quiet fan': 'on' }],
    ['two largest', { hood: 'high', 'quiet fan': 'on', 'attic fan': 'on' }],
    ['all', { 'bath fan': 'on', dryer: 'on', hood: 'high', 'quiet fan': 'on', 'attic fan': 'on' }],
    ['dryers and larger', { dryer: 'on', hood: 'high', 'quiet fan': 'on', 'attic fan': 'on' }],
  ])(
    'with exhaust "%s" is each at its highest speed, continuous fans besides',
    (exhaust, wanted) => {
      expect(running(fans, { exhaust, largerThanM3PerS: 0.075 })).toEqual(wanted);
    },
  );

  it('leaves out the kinds that stay off, whatever their flow', () => {
    expect(running(fans, { exhaust: 'all', without: ['exhaust fan', 'hood'] })).toEqual({
      'bath fan': 'on',
      dryer: 'on',
    });
  });

  it('has a ventilator where it is continuous or takes out more than it brings in', () => {
    const ventilator = (id: string, exhaustFlowM3PerS: number, continuous: boolean) => ({
      id,
      origin: id,
      supplyZone: 'living room',
      exhaustZone: 'living room',
      supplyFlowM3PerS: 0.05,
      exhaustFlowM3PerS,
      continuous,
    });
    const of = house({
      devices: [],
      ventilators: [
        ventilator('even', 0.05, false),
        ventilator('steady', 0.05, true),
        ventilator('pulling', 0.06, false),
      ],
    });
    expect(running(of, { exhaust: 'all' })).toEqual({ steady: 'on', pulling: 'on' });
    expect(running(of, { exhaust: 'continuous only' })).toEqual({ steady: 'on' });
  });
});

describe('doors and the baseline of a test', () => {
  const of = house({ doors: [door('one'), door('two')] });
  const positions = (doors: TestConfiguration['doors']) =>
    states(of, { doors }).map(({ state }) => Object.values(state.doors).join(' '));

  it('stand as the programme says, or in every combination where the worst counts', () => {
    expect(positions('all open')).toEqual(['open open']);
    expect(positions('all shut')).toEqual(['shut shut']);
    expect(positions('as found')).toEqual(['open open']);
    expect(positions('where worse')).toEqual(['open open', 'open shut', 'shut open', 'shut shut']);
  });

  it('stay a list one can run in a house of many doors', () => {
    const many = house({ doors: Array.from({ length: 20 }, (_, i) => door(`door ${i}`)) });
    expect(states(many, { doors: 'where worse' })).toHaveLength(42);
  });

  it('have windows shut, in the baseline too, and the summer cooling fan off', () => {
    const aired = house({
      devices: [
        device({ id: 'fan', kind: 'exhaust fan', speeds: { on: 0.1 } }),
        device({ id: 'night fan', kind: 'summer cooling fan', speeds: { on: 1 } }),
      ],
      openings: [
        {
          id: 'window',
          origin: 'openings.window',
          zone: 'living room',
          to: { kind: 'outdoors' },
          heightM: 1,
          law: { kind: 'orifice', areaM2: 0.5, dischargeCoefficient: 0.6 },
          positions: ['open', 'shut'],
          duringTest: 'closed',
        },
      ],
    });
    const [set] = limitSets;
    const [made] = testStates(aired, set ?? {});
    expect(made?.state).toEqual({ running: { fan: 'on' }, doors: { window: 'shut' } });
    expect(made?.baseline).toEqual({ running: {}, doors: { window: 'shut' } });
  });

  it('have everything off, the doors open or the same, or nothing is subtracted', () => {
    const baseline = (given: TestConfiguration['baseline']) =>
      states(of, { doors: 'all shut', baseline: given })[0]?.baseline;
    expect(baseline('everything off, doors open')).toEqual({
      running: {},
      doors: { one: 'open', two: 'open' },
    });
    expect(baseline('everything off, same doors')).toEqual({
      running: {},
      doors: { one: 'shut', two: 'shut' },
    });
    expect(baseline('nothing is subtracted')).toBeUndefined();
  });
});

describe('what fires in a test', () => {
  const of = house({
    appliances: [
      appliance({ id: 'furnace', inputW: 25000 }),
      appliance({ id: 'stove' }),
      appliance({ id: 'heater', inputW: 10000 }),
      appliance({ id: 'range', vent: 'electric' }),
    ],
  });
  const steps = (firing: TestConfiguration['firing']) => states(of, { firing })[0]?.firingSteps;

  it('begins with the smallest input, one that is not stated last', () => {
    const all = ['heater', 'furnace', 'stove'];
    expect(steps('nothing')).toEqual([]);
    expect(steps('all')).toEqual([all]);
    expect(steps('smallest input first, then all')).toEqual([['heater'], all]);
    expect(steps('each alone, then all')).toEqual([['heater'], ['furnace'], ['stove'], all]);
  });
});

describe('the tests of our own sets', () => {
  it.each(limitSets.map((set) => [set.id, set] as const))(
    '%s can be run in a house with fans and doors',
    (_, set) => {
      const of = house({ doors: [door('one')] });
      const made = testStates(of, set);
      expect(made.length).toBeGreaterThan(0);
      for (const { configuration: id, label, state } of made) {
        expect(set.testConfigurations?.map((one) => one.id)).toContain(id);
        expect(label).not.toBe('');
        for (const [name, speed] of Object.entries(state.running)) {
          const found = of.devices.find((one) => one.id === name);
          expect(found?.speeds.at(-1)?.name).toBe(speed);
        }
      }
    },
  );

  it('are none for a set that describes none', () => {
    expect(testStates(house(), {})).toEqual([]);
  });
});

describe('air handlers and hearth dampers in a test', () => {
  const handler = (id: string, continuous = false) => ({ id, continuous });
  // Only names and whether they run by themselves count here.
  const ducted = (...forcedAir: readonly object[]) => ({ ...fans, forcedAir }) as unknown as House;
  const handlers = (of: House, airHandler: TestConfiguration['airHandler']) =>
    states(of, { airHandler }).map(({ state }) =>
      ['upper', 'lower'].filter((id) => state.running[id] === 'on').join('+'),
    );

  it('stand still, stand as they are, or stand in every combination where the worst counts', () => {
    const two = ducted(handler('upper'), handler('lower', true));
    expect(handlers(two, 'off')).toEqual(['']);
    expect(handlers(two, 'not stated')).toEqual(['lower']);
    expect(handlers(two, 'where it lowers the zone')).toEqual([
      '',
      'lower',
      'upper',
      'upper+lower',
    ]);
  });

  it('are told to be missing where the programme asks for one and the house has none', () => {
    const [only] = states(fans, { airHandler: 'where it lowers the zone' });
    expect(only?.notModelled.join()).toContain('no forced-air system');
    const [with_] = states(ducted(handler('upper')), { airHandler: 'where it lowers the zone' });
    expect(with_?.notModelled).toEqual([]);
  });

  it('name a hearth without a damper, and none that has one', () => {
    const hearth = appliance({ id: 'hearth', kind: 'fireplace', vent: 'open hearth' });
    const asked = { hearthDamper: 'closed' } as const;
    const [bare] = states(house({ appliances: [hearth] }), asked);
    expect(bare?.notModelled.join()).toContain('gives none to the hearth');
    const flue = { damper: { shutAreaM2: 0, shutIn: ['off'] } } as unknown as NonNullable<
      House['appliances'][0]['flue']
    >;
    const [damped] = states(house({ appliances: [{ ...hearth, flue }] }), asked);
    expect(damped?.notModelled).toEqual([]);
  });
});
