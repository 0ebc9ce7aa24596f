import { describe, expect, it } from 'vitest';
import { appliance, house, study, type TypedStudy } from '../test-data/invented-study.js';
import type { Finding } from './finding.js';
import { judge, type JudgeInput } from './judge.js';
import { canada5Pa } from './limit-sets/canada-5-pa.js';
import { chimneyHeightTable } from './limit-sets/chimney-height-table.js';
import { germany4Pa } from './limit-sets/germany-4-pa.js';
import { ventTypeTable } from './limit-sets/vent-type-table.js';

/** The finding of the first appliance of a house; the default has one water heater with a limit of −2 Pa. */
function first(typed: TypedStudy, given: Partial<Omit<JudgeInput, 'worstCase'>> = {}): Finding {
  const of = given.house ?? house();
  const [finding] = judge({
    house: of,
    worstCase: study(of, typed),
    limitSet: ventTypeTable,
    ...given,
  });
  if (finding === undefined) throw new Error('the house has no appliance');
  return finding;
}

describe('a verdict', () => {
  // Limit −2 Pa, band 1 Pa: near from −3 to −1, both ends included.
  it.each<[number, Finding['verdict']]>([
    [-3.0000001, 'beyond the limit'],
    [-3, 'near the limit'],
    [-2, 'near the limit'],
    [-1, 'near the limit'],
    [-0.9999999, 'within the limit'],
    [0, 'within the limit'],
    [4, 'within the limit'],
  ])('on a change of %s Pa against −2 Pa is %s', (changePa, verdict) => {
    expect(first({ changePa }).verdict).toBe(verdict);
  });

  it('is never within the limit in a study that was stopped, but may be near or beyond it', () => {
    const stopped = (changePa: number): Finding => {
      const of = house();
      const worstCase = { ...study(of, { changePa }), stopped: { done: 40, of: 96 } };
      return judge({ house: of, worstCase, limitSet: ventTypeTable })[0]!;
    };
    expect(stopped(-3.1).verdict).toBe('beyond the limit');
    expect(stopped(-2).verdict).toBe('near the limit');
    expect(stopped(0)).toMatchObject({ verdict: 'not judged', cures: [] });
    expect(stopped(0).reason).toContain('40 of 96 situations');
  });

  it('is taken from unrounded numbers', () => {
    expect(first({ changePa: -3 - 1e-12 }).verdict).toBe('beyond the limit');
  });

  it('widens with the stated uncertainty and with the bound on the solver’s error', () => {
    expect(first({ changePa: -3.5 }).verdict).toBe('beyond the limit');
    const wide = first({ changePa: -3.5 }, { statedUncertaintyPa: 2 });
    expect(wide.verdict).toBe('near the limit');
    expect(wide.judged?.nearBandPa).toBe(2);
    // Twice the bound of 0.75 Pa: a change is the difference of two solves.
    expect(first({ changePa: -3.5, enclosureRadiusPa: 0.75 }).judged?.nearBandPa).toBe(1.5);
  });

  it('carries value, limit, margin, baseline, situation, source and set-up', () => {
    expect(first({ changePa: -3.5, baselinePa: -1.25 }).judged).toEqual({
      limitId: 'water-heater-alone',
      condition: 'Natural-draft water heater alone on its vent (orphaned)',
      quantity: 'change from baseline',
      valuePa: -3.5,
      limitPa: -2,
      marginPa: -1.5,
      nearBandPa: 1,
      baselinePa: -1.25,
      situation: { label: 'all on', weather: 'cold', airtightness: 'tested' },
      source: ventTypeTable.limits[0]?.source,
      testSetUp: ventTypeTable.testSetUp,
    });
  });

  it('takes the lowest pressure where the set limits the pressure against outdoors', () => {
    const finding = first({ changePa: -1, lowestPa: -6.5 }, { limitSet: germany4Pa });
    expect(finding.judged?.quantity).toBe('zone minus outdoors');
    expect(finding.judged?.valuePa).toBe(-6.5);
    expect(finding.verdict).toBe('beyond the limit');
  });

  it('never shows a negative zero', () => {
    const finding = first({ changePa: -0, baselinePa: -0 });
    expect(Object.is(finding.judged?.valuePa, 0)).toBe(true);
    expect(Object.is(finding.judged?.baselinePa, 0)).toBe(true);
    expect(Object.is(first({ changePa: -2 }).judged?.marginPa, 0)).toBe(true);
  });

  it('offers cures near and beyond the limit, and none within it', () => {
    expect(first({ changePa: -5 }).cures.length).toBeGreaterThan(0);
    expect(first({ changePa: -2 }).cures.length).toBeGreaterThan(0);
    expect(first({ changePa: 0 }).cures).toEqual([]);
  });
});

describe('what is not judged', () => {
  it.each<[string, Parameters<typeof appliance>[0], RegExp]>([
    ['an electric appliance', { vent: 'electric' }, /^It is electric/],
    ['an unvented appliance', { vent: 'unvented' }, /^It is unvented: its combustion gas enters/],
  ])('%s says why', (_, given, reason) => {
    const finding = first({ changePa: -20 }, { house: house({ appliances: [appliance(given)] }) });
    expect(finding.verdict).toBe('not judged');
    expect(finding.reason).toMatch(reason);
    expect(finding).not.toHaveProperty('judged');
    expect(finding.cures).toEqual([]);
  });

  it('names the sets that have a limit where the chosen one has none', () => {
    const hearth = appliance({ kind: 'fireplace', vent: 'open hearth', fuel: 'wood' });
    const finding = first({ changePa: -20 }, { house: house({ appliances: [hearth] }) });
    expect(finding.verdict).toBe('not judged');
    expect(finding.reason).toBe(
      'The set "vent-type-table" has no limit for a fireplace, open hearth. These sets have one: chimney-height-table, germany-4-pa, canada-f326-1991.',
    );
  });

  it('gives the programme’s own reason for an exclusion', () => {
    const stove = appliance({ kind: 'wood stove', vent: 'closed stove', fuel: 'wood' });
    const finding = first(
      { changePa: -20 },
      { house: house({ appliances: [stove] }), limitSet: canada5Pa },
    );
    expect(finding.verdict).toBe('not judged');
    expect(finding.reason).toMatch(/^CSA F300:22 removed the 5 Pa limit for solid-fuel/);
  });

  it('is every appliance of a study in which nothing could be solved', () => {
    const finding = first({ noneSolved: true, unsolved: 3 });
    expect(finding.verdict).toBe('not judged');
    expect(finding.reason).toMatch(/^No situation of the study could be solved/);
  });

  it('is a value that is not a number', () => {
    expect(first({ changePa: NaN }).verdict).toBe('not judged');
    expect(first({ changePa: -Infinity }).verdict).toBe('not judged');
  });
});

describe('the notes', () => {
  it('never let a verdict look complete where situations did not solve', () => {
    for (const changePa of [0, -2, -9]) {
      expect(first({ changePa, unsolved: 2 }).notes[0]).toBe(
        'Incomplete: 2 of 3 situations could not be solved, and the worst may be among them.',
      );
    }
    expect(first({ changePa: 0 }).notes.join()).not.toContain('Incomplete');
  });

  it('say so where the balance is one of several or its error has no bound', () => {
    expect(first({ unique: false }).notes[0]).toMatch(/one of several/);
    const loose = first({ notEnclosed: 2, enclosureRadiusPa: null });
    expect(loose.notes[0]).toMatch(/could not be bounded in 2 of the study’s solves/);
    expect(loose.judged?.nearBandPa).toBe(1);
  });

  it('name the facts that the house lacks', () => {
    const notes = first({}, { limitSet: chimneyHeightTable }).notes;
    expect(notes[0]).toBe(
      'The house does not state the chimney height and whether the chimney stands outside: of the rows that may apply, the strictest was taken.',
    );
  });

  it('end with what the set itself says, once', () => {
    expect(first({}).notes).toEqual([ventTypeTable.note]);
    expect(first({}, { limitSet: { ...ventTypeTable, note: '' } }).notes).toEqual([]);
  });
});

describe('the findings of a house', () => {
  const of = house({
    appliances: [
      appliance({ sharesVentWith: ['boiler'] }),
      appliance({ id: 'boiler', kind: 'boiler', sharesVentWith: ['water heater'] }),
      appliance({ id: 'cooker', kind: 'room heater', vent: 'electric' }),
    ],
  });

  it('are one for each appliance, in the house’s order', () => {
    const findings = judge({
      house: of,
      worstCase: study(of, { changePa: -4.5 }),
      limitSet: ventTypeTable,
    });
    expect(findings.map(({ appliance, verdict }) => `${appliance}: ${verdict}`)).toEqual([
      'water heater: beyond the limit',
      'boiler: beyond the limit',
      'cooker: not judged',
    ]);
    expect(findings[1]?.judged?.limitId).toBe('natural-draft-common-vent');
  });

  it('are plain JSON', () => {
    const findings = judge({
      house: of,
      worstCase: study(of, { changePa: -4.5, unsolved: 1 }),
      limitSet: ventTypeTable,
    });
    expect(JSON.parse(JSON.stringify(findings))).toStrictEqual(findings);
  });

  it('are none where the house has no appliance', () => {
    const empty = house({ appliances: [] });
    expect(judge({ house: empty, worstCase: study(empty), limitSet: ventTypeTable })).toEqual([]);
  });
});
