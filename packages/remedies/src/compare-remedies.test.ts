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

  it('says of each what its failure makes of the pressure, how far it pushes, and what it leaks when shut', () => {
    const of = (kind: string) => comparison.rows.find((row) => row.kind === kind)!;
    const motorized = of('motorized make-up duct');
    const [asItIs, ...failed] = motorized.failures;
    expect(failed.map(({ failure }) => failure)).toEqual([
      'damper stuck shut',
      'damper stuck open',
      'gasket leaking',
      'filter clogged',
    ]);
    expect(failed[0]!.lowest.pressurePa).toBeLessThan(asItIs!.lowest.pressurePa);
    expect(motorized.closedDamper!.stated!.shareOfTested).toBeGreaterThan(0);
    const powered = of('powered make-up air');
    expect(powered.failures.map(({ failure }) => failure)).toContain('fan failed');
    expect(powered.closedDamper).toBeUndefined();
    // Air that a duct brings in from −10 °C is warmed to 10 °C whatever kind of duct it is.
    for (const kind of ['make-up duct', 'motorized make-up duct', 'powered make-up air']) {
      expect(of(kind).temperingW).toBeGreaterThan(0);
    }
    expect(of('speed cap').failures).toEqual([]);
  });

  it('takes the upper end of a control band for how far it pushes outward', async () => {
    const at = async (overshoot: number) => {
      const remedy = poweredMakeUp(house, { zone, follows: 'hood', shortfall: 0.1, overshoot });
      const { rows } = await compareRemedies(house, defaultLimitSet, {
        remedies: [remedy],
        outlet: { areaM2: 0.2, diffuser: { distanceToHoodM: 3 } },
      });
      return rows[0]!;
    };
    const [narrow, wide] = [await at(0), await at(0.5)];
    expect(wide.highest!.pressurePa).toBeGreaterThan(narrow.highest!.pressurePa);
    expect(wide.guidance.map(({ rule }) => rule)).toEqual([
      'velocity-at-a-diffuser',
      'make-up-jet-at-hood',
    ]);
    const set = wide.sizing.status === 'impossible' ? wide.sizing.best : Number.NaN;
    expect(wide.faceVelocityMPerS! / ((0.9 * set) / 0.2)).toBeCloseTo(1, 1);
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

  it('keeps the rows that are done where it is stopped and that was asked, and else gives none', async () => {
    const controller = new AbortController();
    const house = inventedRow();
    const options = {
      remedies: [speedCap(house, 'hood'), speedCap(house, 'hood')],
      signal: controller.signal,
      onProgress: (done: number) => {
        if (done === 1) controller.abort(new Error('enough'));
      },
    };
    const kept = await compareRemedies(house, defaultLimitSet, { ...options, whenStopped: 'keep' });
    expect(kept.rows).toHaveLength(1);
    expect(kept.stopped).toEqual({ done: 1, of: 2 });
    await expect(compareRemedies(house, defaultLimitSet, options)).rejects.toThrow('enough');
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
