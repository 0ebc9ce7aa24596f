import { describe, expect, it } from 'vitest';
import { appliance, device, house, study } from '../test-data/invented-study.js';
import { judgeAmbientCo } from './judge-ambient-co.js';
import { judgeDraft, weakestDraft } from './judge-draft.js';
import { judgeExtract } from './judge-extract.js';
import { airFreeCo, judgeFlueCo } from './judge-flue-co.js';
import { judgeHouse } from './judge-house.js';
import { judgeSpillageTime } from './judge-spillage-time.js';
import { limitSetById } from './limit-set-by-id.js';
import type { LimitSet } from './limit-set.js';

function set(id: string): LimitSet {
  const found = limitSetById(id);
  if (found === undefined) throw new Error(id);
  return found;
}

const verdicts = (findings: readonly { readonly verdict: string }[]) =>
  findings.map(({ verdict }) => verdict);

describe('the draft that a programme asks for', () => {
  const [limit] = set('vent-type-table').draftLimits ?? [];

  it.each([
    [-20, -2.5],
    [-12.2222, -2.5],
    [-10, -2.4],
    [0, -1.95],
    [10, -1.5],
    [20, -1.05],
    [30, -0.6],
    [35, -0.5],
  ])('at %d °C is %d Pa, as T[°F]/40 − 2.75 worked by hand', (celsius, pascal) => {
    // The corners are typed in °F and the table was worked to two decimals.
    expect(
      Math.abs(weakestDraft({ corners: limit?.corners ?? [] }, celsius) - pascal),
    ).toBeLessThan(0.005);
  });

  const input = (draftPa: number) => ({
    limitSet: set('vent-type-table'),
    appliance: appliance(),
    appliances: [appliance()],
    outdoorTemperatureC: 0,
    draftPa,
  });

  it('is held against the draft with a band of 1 Pa', () => {
    expect(verdicts(judgeDraft(input(-3)))).toEqual(['within the limit']);
    expect(verdicts(judgeDraft(input(-2.9)))).toEqual(['near the limit']);
    expect(verdicts(judgeDraft(input(-1)))).toEqual(['near the limit']);
    expect(verdicts(judgeDraft(input(-0.9)))).toEqual(['beyond the limit']);
    expect(verdicts(judgeDraft(input(NaN)))).toEqual(['not judged']);
  });

  it('may also be too strong', () => {
    const oil = appliance({ kind: 'furnace', fuel: 'oil' });
    const judged = (draftPa: number) =>
      verdicts(judgeDraft({ ...input(draftPa), limitSet: set('oil-heat-manual'), appliance: oil }));
    expect(judged(-1)).toEqual(['beyond the limit']);
    expect(judged(-3.75)).toEqual(['within the limit']);
    expect(judged(-7)).toEqual(['beyond the limit']);
  });

  it('is not judged where the fuel is not stated, and is none where no row is meant', () => {
    const open = appliance({ kind: 'furnace', fuel: 'not stated' });
    const [finding] = judgeDraft({
      ...input(-3),
      limitSet: set('oil-heat-manual'),
      appliance: open,
    });
    expect(finding?.applies).toBe('unknown');
    expect(finding?.give).toEqual(['the fuel or the chimney of the appliance']);
    expect(judgeDraft({ ...input(-3), limitSet: set('germany-4-pa') })).toEqual([]);
  });
});

describe('the time of spillage', () => {
  const judged = (vent: 'cold' | 'warm', spillageS: number | null) =>
    verdicts(
      judgeSpillageTime({
        limitSet: set('spillage-and-co-2015'),
        appliance: 'heater',
        vent,
        spillageS,
      }),
    );

  it('is 2 minutes for a warm vent and 5 for a cold one, with a band of 5 %', () => {
    expect(judged('warm', 113)).toEqual(['within the limit']);
    expect(judged('warm', 120)).toEqual(['near the limit']);
    expect(judged('warm', 127)).toEqual(['beyond the limit']);
    expect(judged('cold', 127)).toEqual(['within the limit']);
    expect(judged('cold', null)).toEqual(['beyond the limit']);
  });
});

describe('carbon monoxide', () => {
  it('in a room is held against each level, and calls for its action', () => {
    const at = (concentrationPpm: number) =>
      judgeAmbientCo({
        limitSet: set('spillage-and-co-2015'),
        zone: 'main',
        concentrationPpm,
      });
    expect(verdicts(at(0))).toEqual(Array(3).fill('within the limit'));
    expect(verdicts(at(9))).toEqual(['near the limit', 'within the limit', 'within the limit']);
    expect(verdicts(at(50))).toEqual(['beyond the limit', 'beyond the limit', 'within the limit']);
    expect(at(100)[2]?.satisfiedBy[0]).toMatch(/^Everyone leaves; call/);
  });

  it('in the gas is freed of air as the trade’s formula has it', () => {
    // 100 ppm at 9 % oxygen, by hand: 100 × 20.9 / 11.9 = 175.63.
    expect(airFreeCo(100, 0.09)).toBeCloseTo(175.63, 2);
    expect(airFreeCo(100, 0)).toBe(100);
    expect(airFreeCo(100, 0.209)).toBe(Infinity);
  });

  it('in the gas is held against the row of the appliance', () => {
    const judged = (measuredPpm: number, oxygenShare: number) =>
      judgeFlueCo({
        limitSet: set('fuel-gas-code-2012'),
        appliance: appliance(),
        appliances: [appliance()],
        measuredPpm,
        oxygenShare,
      });
    expect(judged(100, 0.09)).toHaveLength(1);
    expect(verdicts(judged(100, 0.09))).toEqual(['within the limit']);
    expect(verdicts(judged(130, 0.09))).toEqual(['beyond the limit']);
    expect(verdicts(judged(130, 0.209))).toEqual(['not judged']);
    expect(JSON.stringify(judged(130, 0.209))).not.toContain('null');
  });
});

describe('a limit for the whole house', () => {
  const sealed = house({ appliances: [appliance({ vent: 'sealed combustion' })] });
  const zoned = (changePa: number) => {
    const of = study(sealed, { changePa });
    const [worst] = of.appliances;
    if (worst === undefined) throw new Error('no appliance');
    const { lowest, largestFall } = worst;
    return { ...of, zones: [{ zone: 'basement', lowest, largestFall }] };
  };

  it('is for houses without appliances that suction upsets', () => {
    const [first] = judgeHouse({
      house: house(),
      study: zoned(-30),
      limitSet: set('canada-5-pa'),
    });
    expect(first?.applies).toBe('no');
    expect(first?.why).toContain('water heater');
  });

  it('is held against the worst zone, with a remark where the test is another', () => {
    const judged = (changePa: number, configuration?: string) =>
      judgeHouse({
        house: sealed,
        study: zoned(changePa),
        limitSet: set('canada-5-pa'),
        ...(configuration === undefined ? {} : { configuration }),
      });
    expect(verdicts(judged(-12))).toEqual(['beyond the limit', 'within the limit']);
    expect(verdicts(judged(-25.5, 'all-exhaust'))).toEqual(['near the limit']);
    expect(judged(-12)[0]?.notes.join(' ')).toContain('continuous-ventilation');
    expect(judged(-12, 'all-exhaust')[0]?.notes.join(' ')).not.toContain('study of other states');
  });

  it('is not judged where the fuel decides and is not stated', () => {
    const [finding] = judgeHouse({
      house: house({ appliances: [appliance({ fuel: 'not stated' })] }),
      study: zoned(-12),
      limitSet: set('canada-5-pa'),
    });
    expect(finding?.applies).toBe('unknown');
  });
});

describe('extract beside open flues', () => {
  const judged = (flowM3PerS: number, fuel: 'gas' | 'oil' | 'wood') =>
    judgeExtract(
      house({
        appliances: [appliance({ fuel })],
        devices: [device({ id: 'fan', kind: 'exhaust fan', speeds: { on: flowM3PerS } })],
      }),
      set('united-kingdom-extract'),
    );

  it('may be 20 L/s in the room of gas, and none in that of solid fuel', () => {
    expect(verdicts(judged(0.018, 'gas'))).toEqual(['within the limit']);
    expect(verdicts(judged(0.02, 'gas'))).toEqual(['near the limit']);
    expect(verdicts(judged(0.022, 'gas'))).toEqual(['beyond the limit']);
    expect(verdicts(judged(0.022, 'oil'))).toEqual(['beyond the limit']);
    expect(verdicts(judged(0.001, 'wood'))).toEqual(['beyond the limit']);
  });
});
