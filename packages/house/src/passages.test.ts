import { linkReading, solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather } from './compile-house.js';
import type { CompiledHouse, HouseWeather } from './compiled-house.js';
import { columnDensities } from './compile/column-densities.js';
import { linkId } from './compile/link-id.js';
import type { House } from './house.js';
import { parseHouse } from './parse-house.js';

const base = {
  evendraft: 1,
  name: 'Hazel Rise 9',
  floorArea: '120 m2',
  ceilingHeight: '2.5 m',
  airtightness: { result: '200 L/s at 50 Pa', direction: 'depressurized' },
  weather: [{ name: 'still', outdoorTemperature: '0 C', wind: 'calm' }],
  zones: {
    main: { kind: 'living', area: '110 m2', temperature: '20 C', leakage: { walls: '100 %' } },
    closet: { area: '1 m2', temperature: '18 C', leakage: { walls: '0 %' } },
    attic: { area: '120 m2', temperature: 'outdoors' },
  },
  openings: { 'soffit vents': { zone: 'attic', netFreeArea: '2000 cm2', height: '0 m' } },
};

function house(more: Readonly<Record<string, unknown>>): House {
  const result = parseHouse({ ...base, ...more });
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
  doors: Readonly<Record<string, 'open' | 'shut'>>,
  columns: readonly ('upward' | 'downward')[] = [],
) {
  const weather: HouseWeather = houseWeather(of.house, of.house.weathers[0]!);
  const { scenario } = houseScenario(of, {
    state: { running: {}, doors },
    weather,
    airtightnessCase: 0,
    columns,
  });
  const balance = solveNetwork(of.network, scenario);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  return { balance, scenario, weather };
}

const door = (more: object) => ({ doors: { door: { between: ['main', 'closet'], ...more } } });

describe('an open door', () => {
  const open = { width: '0.9 m', height: '2 m' };

  it('lets rooms of 18 and 20 °C exchange air both ways', () => {
    const made = compiled(house(door({ open, undercut: '100 cm2' })));
    const { balance } = solved(made, { door: 'open' });
    const index = made.network.linkIndex.get(linkId('door', 'door', 'open'))!;
    // Derived: densities 1.212369 and 1.204097 kg/m3, coefficient 0.6, the integral of the orifice law without
    // net flow; the closet has no other way to outdoors.
    const forward = balance.links.forwardKgPerS[index]!;
    const backward = balance.links.backwardKgPerS[index]!;
    expect(forward).toBeCloseTo(backward, 9);
    expect(forward).toBeCloseTo(0.159382, 5);
  });

  it('is the standard size where none is given, which is listed', () => {
    const read = house(door({}));
    expect(read.doors[0]?.open).toEqual({
      kind: 'doorway',
      widthM: 0.9,
      heightM: 2,
      dischargeCoefficient: 0.6,
    });
    const what = read.assumptions
      .filter(({ origin }) => origin === 'doors.door')
      .map((each) => each.what);
    expect(what).toEqual([
      'clear width when open',
      'clear height when open',
      'discharge coefficient',
      'positions studied',
      'position in the baseline',
      'free area under the shut door',
    ]);
  });
});

describe('a shut door', () => {
  it('leaves its undercut, its grille and its louvres, and nothing of them when open', () => {
    const made = compiled(
      house(
        door({
          undercut: '50 cm2',
          grille: { netFreeArea: '100 cm2', height: '2.2 m' },
          louvre: { grossArea: '1 m2', height: '1.9 m', madeOf: 'metal' },
        }),
      ),
    );
    const parts = (doors: Record<string, 'open' | 'shut'>) => {
      const { scenario } = solved(made, doors);
      return made.links.flatMap(({ role, description }, i) =>
        role.kind === 'door' && scenario.linkScale?.[i] === 1 ? [description] : [],
      );
    };
    expect(parts({ door: 'open' }).map(({ law }) => law.kind)).toEqual(['doorway']);
    expect(parts({ door: 'shut' }).map(({ law, fromHeightM }) => [law.kind, fromHeightM])).toEqual([
      ['orifice', 0],
      ['orifice', 2.2],
      ['doorway', 0],
    ]);
    const louvre = parts({ door: 'shut' })[2]?.law;
    expect(louvre).toMatchObject({ heightM: 1.9 });
    // Three quarters of a square metre, spread over the height.
    expect(louvre?.kind === 'doorway' && louvre.widthM * louvre.heightM).toBeCloseTo(0.75, 12);
  });

  it('lets air through a jump duct beside it, at the ceiling', () => {
    const made = compiled(house(door({ jumpDuct: { diameter: '200 mm', length: '2 m' } })));
    const [part] = made.house.doors[0]?.parts ?? [];
    expect(part).toMatchObject({ name: 'jump duct', heightM: 2.5, when: 'always' });
    expect(part?.law.kind).toBe('duct');
    const { scenario } = solved(made, { door: 'open' });
    const index = made.network.linkIndex.get(linkId('door', 'door', 'jump duct'))!;
    expect(scenario.linkScale?.[index]).toBe(1);
  });

  it('has a column in its jump duct where the ceilings are at different heights', () => {
    const zones = {
      ...base.zones,
      main: { ...base.zones.main, height: '2.5 m' },
      closet: { ...base.zones.closet, height: '3.3 m', temperature: '30 C' },
    };
    const made = compiled(
      house({ ...door({ jumpDuct: { diameter: '200 mm', length: '2 m' } }), zones }),
    );
    const index = made.network.linkIndex.get(linkId('door', 'door', 'jump duct'))!;
    const link = made.network.description.links[index]!;
    expect(link.toHeightM - link.fromHeightM).toBeCloseTo(0.8, 12);
    expect(made.twoStateLinks.map(({ id }) => id)).toEqual([link.id]);
    // Air that goes up in it comes from the lower ceiling, that of the first room of the door.
    expect(made.twoStateLinks[0]).toMatchObject({ upward: link.from, downward: link.to });
    const heights = made.house.assumptions.filter(({ what }) =>
      what.startsWith('height of its jump'),
    );
    expect(heights.map(({ value }) => (typeof value === 'object' ? value.si : value))).toEqual([
      2.5, 3.3,
    ]);
  });

  it('with louvres lets warm air leave a closet above while cool air enters below', () => {
    const warm = { ...base.zones, closet: { ...base.zones.closet, temperature: '30 C' } };
    const made = compiled(house({ ...door({ louvre: '2000 cm2' }), zones: warm }));
    const { balance } = solved(made, { door: 'shut' });
    const index = made.network.linkIndex.get(linkId('door', 'door', 'louvre'))!;
    expect(balance.links.forwardKgPerS[index]).toBeGreaterThan(0.01);
    expect(balance.links.backwardKgPerS[index]).toBeGreaterThan(0.01);
  });
});

describe('an archway', () => {
  it('stands open in every state', () => {
    const read = house(door({ kind: 'archway' }));
    expect(read.doors[0]).toMatchObject({ positions: ['open'], baselinePosition: 'open' });
    expect(read.doors[0]?.shut).toEqual(read.doors[0]?.open);
  });
});

describe('combustion air', () => {
  const air = (more: object) => ({
    ...door({}),
    combustionAir: { air: { zone: 'closet', duringTest: 'sealed', ...more } },
  });

  it('comes through a high and a low opening, each with its heights', () => {
    const read = house(air({ to: 'attic', high: '600 cm2', low: '600 cm2' }));
    const openings = read.openings.filter(({ combustionAir }) => combustionAir !== undefined);
    expect(openings.map(({ id, heightM, riseM }) => [id, heightM, riseM])).toEqual([
      // In the ceiling, and by a vertical duct from six inches above the floor.
      ['air high', 2.5, undefined],
      ['air low', 6 * 0.0254, 6 * 0.0254 - 2.5],
    ]);
    const outdoors = house(air({ to: 'back', high: '600 cm2', low: '600 cm2' })).openings;
    expect(outdoors.slice(-2).map(({ heightM, riseM }) => [heightM, riseM])).toEqual([
      [2.5 - 6 * 0.0254, undefined],
      [6 * 0.0254, undefined],
    ]);
  });

  it('fills a vertical duct with whichever air enters', () => {
    const made = compiled(house(air({ to: 'attic', low: '600 cm2' })));
    expect(made.twoStateLinks).toMatchObject([{ upward: 'closet', downward: 'attic' }]);
    const { scenario, weather } = solved(made, { door: 'shut' }, ['downward']);
    const [column] = columnDensities(made, { state: { running: {}, doors: {} }, weather });
    expect(column?.upward).toBeCloseTo(1.2124, 3);
    // Dry air at 0 °C and 101,325 Pa, 1.2922 kg/m3 (derived).
    expect(column?.downward).toBeCloseTo(1.2922, 3);
    expect(scenario.columnDensityKgPerM3?.[column!.index]).toBe(column?.downward);
    // Upward the closet drains into the attic, downward the cold column pours into it.
    const flow = (direction: 'upward' | 'downward') =>
      linkReading(
        made.network,
        solved(made, { door: 'shut' }, [direction]).balance,
        made.twoStateLinks[0]!.id,
      ).massFlowKgPerS;
    expect(Math.sign(flow('upward'))).not.toBe(Math.sign(flow('downward')));
  });
});
