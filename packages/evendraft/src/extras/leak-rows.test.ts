import { parseHouse, compileHouse } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { assess } from '../assess.js';
import { reportExtras } from '../report-extras.js';

const cfm = 0.3048 ** 3 / 60;

/** Invented: two zones, a plenum of its own law and an attic above. */
const parsed = parseHouse({
  evendraft: 1,
  name: 'Test Lane 11',
  floorArea: '1500 ft2',
  airtightness: { result: '1000 cfm at 50 Pa', exponent: 0.65, direction: 'depressurized' },
  zones: {
    main: {
      kind: 'living',
      ...{ floorHeight: '0 ft', height: '9 ft', area: '1000 ft2', temperature: '70 F' },
      leakage: { walls: '60 %', ceiling: '20 %' },
    },
    annex: {
      kind: 'living',
      ...{ floorHeight: '0 ft', height: '9 ft', area: '500 ft2', temperature: '70 F' },
      leakage: { walls: '20 %' },
    },
  },
  doors: { door: { between: ['main', 'annex'], undercut: '20 in2', positions: ['open', 'shut'] } },
  openings: { vent: { zone: 'main', height: '7 ft', netFreeArea: '10 in2', duringTest: 'open' } },
  exhaust: { hood: { flow: '300 cfm', zone: 'main' } },
  weather: [{ name: 'cold', outdoorTemperature: '-10 C' }],
  appliances: { boiler: { vent: 'natural draft', fuel: 'gas', kind: 'boiler', zone: 'main' } },
});
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
const { house } = parsed;

describe('the rows of leaks', () => {
  it('are one a leak of the model, and add up to the test and to the air of each zone', async () => {
    const assessment = await assess(house, { cures: 'never' });
    const { leaks = [] } = await reportExtras(house, assessment, { system: 'us' });
    const compile = compileHouse(house);
    if (!compile.ok) throw new Error('not compiled');
    const links = compile.compiled.links.filter(({ role }) => role.kind === 'leak');
    const own = leaks.filter(({ heightM }) => heightM !== undefined);
    expect(own).toHaveLength(links.length);
    // Two walls of four faces and three heights, and a ceiling.
    expect(own).toHaveLength(25);
    const keys = own.map(({ item, zone, to, heightM }) =>
      JSON.stringify([item, zone, to, heightM]),
    );
    expect(new Set(keys).size).toBe(25);
    expect(own.find(({ item }) => item === 'ceiling')).toMatchObject({
      to: 'roof',
      given: '20 % of the tested leakage',
    });
    const sum = (read: (row: (typeof leaks)[number]) => number | undefined): number =>
      leaks.reduce((all, row) => all + (read(row) ?? NaN), 0);
    // The whole tested envelope, openings that were open among it: 1000 cfm at 50 Pa.
    expect(sum((row) => row.at50PaM3PerS) / cfm).toBeCloseTo(1000, 6);
    // At 4 Pa a leak passes (4/50)^0.65 of it; a hole with an exponent of a half more.
    const vent = leaks.find(({ item }) => item === 'vent')!;
    expect(vent.at4PaM3PerS / vent.at50PaM3PerS).toBeCloseTo(Math.sqrt(4 / 50), 2);
    expect(own[0]!.at4PaM3PerS / own[0]!.at50PaM3PerS).toBeCloseTo((4 / 50) ** 0.65, 12);
    expect(own[0]!.given).toBe(
      '60 % of the tested leakage, even over four faces and three heights',
    );
    // With nothing running as much air leaves through leaks as enters; in the worst state what the hood moves enters.
    expect(sum((row) => row.baselineFlowM3PerS) / cfm).toBeLessThan(10);
    const delivered = assessment.worstCase.situations[0]!.devices[0]!.deliveredFlowM3PerS;
    expect(-sum((row) => row.worstFlowM3PerS)).toBeGreaterThan(0.8 * delivered);
    expect(-sum((row) => row.worstFlowM3PerS)).toBeLessThan(1.2 * delivered);
  });
});
