import { compileHouse, parseHouse, type House } from '@evendraft/house';
import { combustionStudy, worstCaseStudy } from '@evendraft/studies';
import { describe, expect, it } from 'vitest';
import { linedChimneys, sealedAppliance, sealedTogether } from './flue-changes.js';

/** Synthetic, made for this project. */
function house(appliances: Readonly<Record<string, unknown>>): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Test Flue Row 1',
    floorArea: '1500 ft2',
    airtightness: '1500 cfm at 50 Pa',
    exhaust: { hood: '200 cfm' },
    appliances,
    weather: [{ name: 'mild', outdoorTemperature: '50 F' }],
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

const connector = { length: '5 ft', rise: '1 ft', diameter: '4 in', elbows: 2 };
const flueOf = (chimney: Readonly<Record<string, unknown>>) => ({
  height: '20 ft',
  exteriorShare: '50 %',
  collarHeight: '5 ft',
  connector,
  ...chimney,
});
const heater = (chimney: Readonly<Record<string, unknown>>) => ({
  'water heater': {
    vent: 'natural draft',
    fuel: 'gas',
    input: '36 kBtu/h',
    flue: flueOf(chimney),
  },
});

/** Draft at the tap of a warm flue in every situation studied. */
async function draftsOf(of: House): Promise<readonly number[]> {
  const compile = compileHouse(of);
  if (!compile.ok) throw new Error(JSON.stringify(compile.issues));
  const worstCase = await worstCaseStudy(compile.compiled);
  const study = await combustionStudy(compile.compiled, { worstCase, temperaturesC: [] });
  return study.appliances.flatMap(({ situations }) =>
    situations.map(({ states, fromWarm }) => states[fromWarm]!.flues[0]!.tapDraftPa),
  );
}

describe('a lined chimney', () => {
  it('draws as that of a house file with the liner in it', async () => {
    const wide = house(heater({ size: ['8 in', '8 in'], construction: 'masonry lined' }));
    const [change] = linedChimneys(wide, ['water heater']);
    const byFile = house(heater({ diameter: '4 in', construction: 'insulated metal liner' }));
    const lined = await draftsOf(change!.houses[0]!);
    const expected = await draftsOf(byFile);
    expect(lined).toHaveLength(expected.length);
    // An elbow at the top or a change of width may count otherwise; the liner itself is the same.
    lined.forEach((draft, i) => expect(Math.abs(draft - expected[i]!)).toBeLessThan(0.1));
    const before = await draftsOf(wide);
    expect(Math.max(...lined.map((draft, i) => Math.abs(draft - before[i]!)))).toBeGreaterThan(0.3);
  }, 60_000);

  it('is no cure of a chimney that is narrow and warm already', () => {
    const narrow = house(heater({ diameter: '4 in', construction: 'double wall' }));
    expect(linedChimneys(narrow, ['water heater'])).toEqual([]);
  });
});

describe('an appliance changed to sealed combustion', () => {
  const both = house({
    furnace: {
      vent: 'natural draft',
      fuel: 'gas',
      input: '80 kBtu/h',
      sharesVentWith: ['water heater'],
      flue: { ...flueOf({ diameter: '7 in', construction: 'double wall' }) },
    },
    'water heater': {
      vent: 'natural draft',
      fuel: 'gas',
      input: '36 kBtu/h',
      sharesVentWith: ['furnace'],
      flue: { diameter: '4 in', connector: { length: '4 ft', diameter: '4 in' } },
    },
  });

  it('leaves its chimney to the one that joined it', () => {
    const { houses, onlyFor } = sealedAppliance(both, 'furnace');
    const [furnace, heir] = houses[0]!.appliances;
    expect(furnace!.vent).toBe('sealed combustion');
    expect(furnace!.flue).toBeUndefined();
    expect(heir!.sharesVentWith).toEqual([]);
    expect(heir!.flue!.joins).toBeUndefined();
    expect(heir!.flue!.chimney).toEqual(both.appliances[0]!.flue!.chimney);
    expect(compileHouse(houses[0]!).ok).toBe(true);
    expect(onlyFor).toEqual(['furnace', 'water heater']);
  });

  it('leaves the owner of the chimney as it was where the other is changed', () => {
    const [owner, sealed] = sealedAppliance(both, 'water heater').houses[0]!.appliances;
    expect(owner!.flue).toEqual(both.appliances[0]!.flue);
    expect(owner!.sharesVentWith).toEqual([]);
    expect(sealed!.flue).toBeUndefined();
  });

  it('can be all of those on one vent', () => {
    const [together] = sealedTogether(both, ['furnace']);
    expect(together!.houses[0]!.appliances.map(({ vent }) => vent)).toEqual([
      'sealed combustion',
      'sealed combustion',
    ]);
    expect(compileHouse(together!.houses[0]!).ok).toBe(true);
  });
});
