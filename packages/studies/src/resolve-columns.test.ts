import { compileHouse, houseWeather, parseHouse, type CompiledHouse } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { solveNetwork } from '@evendraft/network';
import { balanceStudy, baselineStudy } from './balance-study.js';
import { resolveColumns } from './resolve-columns.js';
import { worstCaseStudy, type WorstCaseStudy } from './worst-case-study.js';

/** A closet that a shaft of 8 m connects to outdoors, and a door and leaks to the rest of the house. */
function compiled(
  outdoors: string,
  shaft: object = { endHeight: '8 m' },
  second?: object,
): CompiledHouse {
  const hole = { zone: 'closet', to: 'roof', netFreeArea: '200 cm2', duringTest: 'sealed' };
  const read = parseHouse({
    evendraft: 1,
    name: 'Aspen Steps 2',
    floorArea: '100 m2',
    airtightness: '150 L/s at 50 Pa',
    zones: {
      main: { kind: 'living', area: '98 m2', leakage: { walls: '99 %' } },
      closet: { area: '2 m2', leakage: { walls: '1 %' } },
    },
    doors: { door: { between: ['main', 'closet'] } },
    openings: {
      shaft: { ...hole, ...shaft },
      ...(second && { second: { ...hole, ...second } }),
    },
    exhaust: {
      hood: { kind: 'hood', flow: '150 L/s', constantFlow: { upTo: '500 Pa' } },
      fan: { kind: 'bath fan', flow: '20 L/s', constantFlow: { upTo: '500 Pa' } },
    },
    forcedAir: { handler: { flow: '100 L/s', supplies: 'main', returns: 'main' } },
    appliances: { 'water heater': { vent: 'natural draft', zone: 'closet' } },
    weather: [{ name: 'weather', outdoorTemperature: outdoors, wind: 'calm' }],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const result = compileHouse(read.house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.compiled;
}

function resolved(of: CompiledHouse, running: Readonly<Record<string, string>> = {}) {
  const weather = houseWeather(of.house, of.house.weathers[0]!);
  return resolveColumns(of, {
    state: { running, doors: { door: 'shut' } },
    weather,
    airtightnessCase: 0,
  });
}

describe('resolveColumns', () => {
  it('finds a shaft in winter standing warm upward or cold downward, and shows the deeper one', () => {
    const { result, columns } = resolved(compiled('-10 C'), { fan: 'on' });
    expect(columns).toMatchObject({ stableBalances: 2, complete: true });
    expect(columns?.states).toMatchObject([{ item: 'shaft', state: 'upward' }]);
    // The fan alone sucks some 2 Pa, 50 (20/150)^(1/0.65); the warm column pulls besides.
    expect(result.status === 'solved' && result.pressuresPa[1]!).toBeLessThan(-2.3);
  });

  it('finds only the cold column where a fan pulls harder than the shaft draws', () => {
    const { columns } = resolved(compiled('-10 C'), { hood: 'on' });
    expect(columns).toMatchObject({ stableBalances: 1 });
    expect(columns?.states).toMatchObject([{ state: 'downward' }]);
  });

  it('finds a shaft at rest between cool air below and hot air above', () => {
    const { columns } = resolved(compiled('35 C'));
    expect(columns).toMatchObject({ stableBalances: 1, complete: true });
  });

  it('gives a scenario in which a plain solve finds the same balance', () => {
    for (const outdoors of ['-10 C', '35 C']) {
      const house = compiled(outdoors);
      const { result, scenario } = resolved(house, { fan: 'on' });
      const again = solveNetwork(house.network, scenario);
      if (result.status !== 'solved' || again.status !== 'solved') throw new Error('not solved');
      // A column at rest has the air that makes its flow zero but for rounding.
      result.pressuresPa.forEach((pressure, i) =>
        expect(again.pressuresPa[i]).toBeCloseTo(pressure, 4),
      );
    }
  });

  it('goes on in a worst case', async () => {
    const house = compiled('-10 C');
    const listed = await worstCaseStudy(house);
    const searched = await worstCaseStudy(house, { listUpTo: 1 });
    const lowest = (study: WorstCaseStudy) =>
      study.zones.map(({ lowest: { pressurePa } }) => Number(pressurePa.toFixed(6)));
    expect(lowest(searched)).toEqual(lowest(listed));
    // Two fans and an air handler, each on or off, and a door open or shut.
    expect(listed.counts.states).toBe(2 ** 4);
    // The fans are bounded; the air handler moves air between rooms.
    expect(searched.coverage?.notOrdered).toEqual(['handler']);
  });

  it('says nothing of columns where no opening changes height', () => {
    expect(resolved(compiled('-10 C', {})).columns).toBeUndefined();
  });

  it('is what a balance shows', () => {
    const house = compiled('-10 C');
    const balance = balanceStudy(house, {
      state: { running: { fan: 'on' }, doors: { door: 'shut' } },
      weather: houseWeather(house.house, house.house.weathers[0]!),
    });
    if (balance.status !== 'solved') throw new Error(balance.hint);
    expect(balance.columns?.stableBalances).toBe(2);
    // It is one of two, so that nothing says it were the only one; its own error is bounded all the same.
    expect(balance.proof.unique).toBe(false);
    expect(balance.proof.enclosureRadiusPa).toBeLessThan(1e-6);
  });

  it('counts a fall from the highest baseline, where two shafts can stand in two ways with everything off', async () => {
    const house = compiled('-10 C', { endHeight: '8 m' }, { endHeight: '5 m' });
    const weather = houseWeather(house.house, house.house.weathers[0]!);
    const doors = { door: 'shut' } as const;
    const state = { running: { fan: 'on' }, doors } as const;
    const off = resolved(house);
    expect(off.columns).toMatchObject({ stableBalances: 2, counted: true });
    const closet = 1;
    const { lowestPa, highestPa } = off.span!;
    expect(highestPa[closet]! - lowestPa[closet]!).toBeGreaterThan(1);

    const baseline = baselineStudy(house, { state, weather });
    if (baseline.status !== 'solved') throw new Error('not solved');
    expect(baseline.pressuresPa[closet]).toBe(highestPa[closet]);
    expect(baseline.columns).toEqual({ stableBalances: 2, counted: true, complete: true });

    const balance = balanceStudy(house, { state, weather });
    if (balance.status !== 'solved') throw new Error(balance.hint);
    const lowest = resolved(house, { fan: 'on' }).span!.lowestPa[closet]!;
    expect(balance.zones[closet]!.pressurePa).toBe(lowest);
    expect(balance.zones[closet]!.changeFromBaselinePa).toBe(lowest - highestPa[closet]!);
    expect(balance.baselineColumns?.stableBalances).toBe(2);
    const shown = (side: 'lowest' | 'highest'): number => {
      const situation = { state: { running: {}, doors }, weather, airtightnessCase: 0 };
      const { result } = resolveColumns(house, situation, side);
      return result.status === 'solved' ? result.pressuresPa[closet]! : Number.NaN;
    };
    expect(shown('highest')).toBeGreaterThan(shown('lowest') + 1);

    // In a worst case and in a search alike: no fall that its own situations do not give.
    const falls = [Infinity, 1].map(async (listUpTo) => {
      const { zones } = await worstCaseStudy(house, { listUpTo });
      return zones[closet]!.largestFall.changeFromBaselinePa;
    });
    const [listed, searched] = await Promise.all(falls);
    expect(Math.abs(searched! - listed!)).toBeLessThan(1e-4);
    expect(listed).toBeLessThanOrEqual(lowest - highestPa[closet]!);
  });
});
