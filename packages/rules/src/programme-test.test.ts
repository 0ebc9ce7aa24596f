import {
  baselineOf,
  compileHouse,
  houseWeather,
  parseHouse,
  type CompiledHouse,
} from '@evendraft/house';
import { resolveColumns, worstCaseStudy } from '@evendraft/studies';
import { describe, expect, it, vi } from 'vitest';
import { judge } from './judge.js';
import { limitSetById } from './limit-set-by-id.js';
import type { LimitSet } from './limit-set.js';
import { programmeTest } from './programme-test.js';

// An invented house: a basement with a water heater, a door to it, a hood and two small fans upstairs.
const file = {
  evendraft: 1,
  name: 'Test Row 2',
  floorArea: '2000 ft2',
  airtightness: '600 cfm at 50 Pa',
  zones: {
    main: { kind: 'living', area: '1200 ft2', height: '8 ft' },
    basement: { kind: 'basement', area: '800 ft2', height: '8 ft', floorHeight: '-8 ft' },
  },
  doors: { 'basement door': { between: ['main', 'basement'], undercut: '16 in2' } },
  exhaust: {
    hood: { low: '150 cfm', high: '400 cfm', zone: 'main' },
    dryer: { flow: '150 cfm', zone: 'basement' },
    'bath fan': { flow: '50 cfm', zone: 'main' },
  },
  appliances: {
    'water heater': { vent: 'natural draft', fuel: 'gas', input: '40 kBtu/h', zone: 'basement' },
  },
};

function compiled(changes: object = {}): CompiledHouse {
  const parsed = parseHouse({ ...file, ...changes });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const result = compileHouse(parsed.house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.compiled;
}

function set(id: string): LimitSet {
  const found = limitSetById(id);
  if (found === undefined) throw new Error(id);
  return found;
}

describe('a programme’s own test', () => {
  it('is solved in its own states and judged apart from the true worst case', async () => {
    const house = compiled();
    const worst = await worstCaseStudy(house);
    const test = programmeTest(house, set('vent-type-table'));
    const weathers = house.house.weathers.length;
    expect(test.unsolved).toEqual([]);
    expect(test.states).toHaveLength(2);
    expect(test.situations).toHaveLength(2 * weathers);
    const [own] = judge({ house: house.house, worstCase: test, limitSet: set('vent-type-table') });
    const [true_] = judge({
      house: house.house,
      worstCase: worst,
      limitSet: set('vent-type-table'),
    });
    expect(own?.judged?.limitId).toBe('water-heater-alone');
    expect(own?.verdict).toBe('beyond the limit');
    // Everything on can be no deeper against outdoors than the deepest of all states.
    const lowest = (study: typeof test | typeof worst) => study.appliances[0]?.lowest.pressurePa;
    expect(lowest(test)).toBeGreaterThanOrEqual((lowest(worst) ?? NaN) - 1e-6);
    expect(own?.judged?.valuePa).toBe(test.appliances[0]?.largestFall.changeFromBaselinePa);
    expect(true_?.judged?.valuePa).toBe(worst.appliances[0]?.largestFall.changeFromBaselinePa);
  });

  it('subtracts a baseline with the doors open where its programme does', () => {
    const house = compiled();
    const test = programmeTest(house, set('vent-type-table'));
    for (const weather of house.house.weathers) {
      const [open, shut] = ['open', 'shut'].map((position) => {
        const found = test.situations.find(
          (one) => one.weather === weather.name && one.state.doors['basement door'] === position,
        );
        const zone = found?.zones.find((one) => one.zone === 'basement');
        return zone === undefined ? NaN : zone.pressurePa - zone.changeFromBaselinePa;
      });
      // One baseline for both positions of the door, to the accuracy of a solve.
      expect(Math.abs((open ?? NaN) - (shut ?? NaN))).toBeLessThan(1e-9);
    }
  });

  it('solves a baseline once in each weather, however many states share it', async () => {
    // Solved as ever, and counted: in modules of their own, because tests share theirs.
    const studies = await import('@evendraft/studies');
    const solve = vi.fn(studies.baselineStudy);
    vi.resetModules();
    vi.doMock('@evendraft/studies', () => ({ ...studies, baselineStudy: solve }));
    const { programmeTest: counted } = await import('./programme-test.js');
    vi.doUnmock('@evendraft/studies');
    vi.resetModules();
    const house = compiled({
      forcedAir: { 'air handler': { flow: '900 cfm', supplies: 'main', returns: 'basement' } },
    });
    const test = counted(house, set('vent-type-table'));
    const weathers = house.house.weathers.length;
    // The door both ways, the air handler both ways, all against everything off with the doors open.
    expect(test.states).toHaveLength(4);
    expect(test.situations).toHaveLength(4 * weathers);
    expect(solve).toHaveBeenCalledTimes(weathers);
    // A return in the basement pulls it down where the door is shut.
    const worst = test.appliances[0]!.largestFall;
    expect(worst.state.running['air handler']).toBe('on');
    expect(worst.state.doors['basement door']).toBe('shut');
  });

  it('can be one configuration of several', () => {
    const test = programmeTest(compiled(), set('canada-5-pa'), 'continuous-ventilation');
    expect(test.configuration).toBe('continuous-ventilation');
    expect(test.states.map(({ state }) => state.running)).toEqual([{}]);
    for (const { changeFromBaselinePa } of test.situations.flatMap(({ zones }) => zones)) {
      expect(Math.abs(changeFromBaselinePa)).toBeLessThan(1e-9);
    }
  });

  it('counts the fall from the highest baseline, and says so, where either of two flues may carry air down', () => {
    const flue = (height: string) => ({
      height,
      diameter: '6 in',
      construction: 'double-wall gas vent',
      draftHood: true,
      duringTest: 'sealed',
    });
    const house = compiled({
      airtightness: '150 cfm at 50 Pa',
      appliances: {
        boiler: {
          vent: 'natural draft',
          kind: 'boiler',
          fuel: 'gas',
          zone: 'main',
          flue: flue('24 ft'),
        },
        stove: {
          vent: 'natural draft',
          kind: 'wood stove',
          fuel: 'wood',
          zone: 'main',
          flue: flue('15 ft'),
        },
      },
      weather: [{ name: 'cold', outdoorTemperature: '0 F', wind: 'calm' }],
    });
    const test = programmeTest(house, set('vent-type-table'));
    const weather = houseWeather(house.house, house.house.weathers[0]!);
    const before = test.states[0]!.baseline ?? baselineOf(test.states[0]!.state);
    const { span } = resolveColumns(house, { state: before, weather, airtightnessCase: 0 });
    expect(span!.highestPa[0]! - span!.lowestPa[0]!).toBeGreaterThan(1);
    const [situation] = test.situations;
    const { pressurePa, changeFromBaselinePa } = situation!.zones[0]!;
    expect(pressurePa - changeFromBaselinePa).toBeCloseTo(span!.highestPa[0]!, 9);
    const [finding] = judge({
      house: house.house,
      worstCase: test,
      limitSet: set('vent-type-table'),
    });
    expect(finding?.notes.join(' ')).toContain(
      'counted from the balance with the highest pressure',
    );
  });
});
