import { defaultLimitSet } from '@evendraft/rules';
import { makeUpDuct, motorizedMakeUp, poweredMakeUp, speedCap } from '@evendraft/studies';
import { beforeAll, describe, expect, it } from 'vitest';
import { inventedRow } from '../test-data/invented-row.js';
import { compareRemedies, type RemedyComparison } from './compare-remedies.js';
import { rankRemedies } from './rank-rule.js';

// A boiler alone on its vent may see 5 Pa; the dryer alone makes a little more than that.
const house = inventedRow({
  exhaust: { hood: { low: '150 cfm', high: '300 cfm' }, dryer: '300 cfm' },
  airtightness: '1100 cfm at 50 Pa',
  weather: [{ name: 'cold', outdoorTemperature: '-10 C' }],
  appliances: { boiler: { vent: 'natural draft', fuel: 'gas', kind: 'boiler' } },
});
const zone = house.zones[0]!.id;
const run = { lengthM: 3, elbows: 2, intakeLoss: 2 };
const remedies = [
  makeUpDuct(house, { zone, run }),
  motorizedMakeUp(house, { zone, run, opensWith: { driver: 'hood' } }),
  poweredMakeUp(house, { zone, follows: 'hood' }),
  speedCap(house, 'hood'),
];

describe('remedies side by side', () => {
  let comparison: RemedyComparison;
  beforeAll(async () => {
    comparison = await compareRemedies(house, defaultLimitSet, {
      remedies,
      year: {
        weather: { kind: 'degree days', heatingKelvinDays: 3000, coolingKelvinDays: 300 },
        hoursPerDay: 1,
      },
    });
  }, 60_000);

  it('says what does it and what cannot: the dryer alone is beyond the limit where a damper follows the hood', () => {
    const status = Object.fromEntries(
      comparison.rows.map(({ kind, sizing }) => [kind, sizing.status]),
    );
    expect(status).toEqual({
      'make-up duct': 'sized',
      'motorized make-up duct': 'impossible',
      'powered make-up air': 'impossible',
      'speed cap': 'impossible',
    });
    const motorized = comparison.rows.find(({ kind }) => kind === 'motorized make-up duct')!;
    expect(motorized.sizing).toMatchObject({ obstacle: { kind: 'stays shut' } });
    expect(comparison.rows[0]!.kind).toBe('make-up duct');
  });

  it('gives every row its margins, hood flow, face velocity, heat, year, upkeep and code', () => {
    const [duct] = comparison.rows;
    expect(duct!.sizing.margins[0]!.target.id).toContain('boiler: ');
    expect(duct!.exhaustFlowM3PerS).toBeGreaterThan(0.1);
    expect(duct!.faceVelocityMPerS).toBeGreaterThan(0);
    expect(duct!.guidance).toHaveLength(1);
    expect(duct!.inducedHeatW).toBeGreaterThan(0);
    expect(duct!.year!.totalKWh).toBeGreaterThan(0);
    expect(duct!.year!.byHours).toBeUndefined();
    expect(duct!.upkeep).not.toEqual([]);
    expect(duct!.code.map(({ standing }) => standing)).toContain('not satisfied');
    expect(JSON.parse(JSON.stringify(comparison))).toEqual(comparison);
  });

  it('gives the exhaust curve as the house is and of every row, at the same flows', () => {
    const { asItIs, rows } = comparison;
    expect(asItIs!.points).toHaveLength(17);
    const [duct] = rows;
    for (const [index, { exhaustFlowM3PerS, pressurePa }] of duct!.exhaustCurve!.points.entries()) {
      expect(exhaustFlowM3PerS).toBe(asItIs!.points[index]!.exhaustFlowM3PerS);
      if (index > 0) expect(pressurePa).toBeGreaterThan(asItIs!.points[index]!.pressurePa);
    }
    expect(rows.every(({ exhaustCurve }) => exhaustCurve !== undefined)).toBe(true);
  });

  it('ranks by the rule that is given', () => {
    const byUpkeep = rankRemedies(comparison.rows, [
      { by: 'things to look after', better: 'less', step: 0.5 },
    ]);
    expect(byUpkeep.map(({ upkeep }) => upkeep.length)).toEqual(
      comparison.rows.map(({ upkeep }) => upkeep.length).sort((a, b) => a - b),
    );
    const byMore = rankRemedies(comparison.rows, [
      { by: 'things to look after', better: 'more', step: 0.5 },
    ]);
    expect(byMore[0]!.upkeep.length).toBeGreaterThan(byUpkeep[0]!.upkeep.length);
  });

  it('sizes nothing for a house without an appliance that the set limits', async () => {
    const electric = inventedRow({
      appliances: { 'water heater': { vent: 'electric', kind: 'water heater' } },
    });
    const none = await compareRemedies(electric, defaultLimitSet, {
      remedies: [speedCap(electric, 'hood')],
    });
    expect(none.rows).toEqual([]);
    expect(none.withoutLimit).toEqual(['water heater']);
  });
});
