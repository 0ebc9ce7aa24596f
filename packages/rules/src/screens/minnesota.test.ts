import { describe, expect, it } from 'vitest';
import { appliance, device } from '../../test-data/invented-study.js';
import { screen, screenedHouse, si, valueOf, verdicts } from '../../test-data/screened.js';
import { minnesotaPassiveOpening, minnesotaPassiveOpenings } from './minnesota-passive-openings.js';

const rule = 'minnesota-make-up-air';
const heater = (id: string, vent: 'natural draft' | 'fan assisted' | 'direct vent') =>
  appliance({ id, vent });

describe('the state’s worksheet', () => {
  it('is worked line by line: column C, 2,000 ft², hood 600, bath fan 80, dryer 135 by the form', () => {
    const [finding] = screen(rule, screenedHouse());
    // 0.06 × 2,000 = 120; 135 + 0.8 × 600 + 0.8 × 80 = 679; 679 − 120 = 559 cfm.
    expect(valueOf(finding, 'infiltration')).toBeCloseTo(si.cfm(120), 12);
    expect(valueOf(finding, 'exhaust')).toBeCloseTo(si.cfm(679), 12);
    expect(valueOf(finding, 'make-up air')).toBeCloseTo(si.cfm(559), 12);
    expect(valueOf(finding, 'passive opening')).toBe('none: powered make-up air');
    expect(finding?.verdict).toBe('beyond the limit');
  });

  it('has no second rating in column A', () => {
    const of = screenedHouse({ appliances: [heater('heater', 'direct vent')] });
    const [finding] = screen(rule, of);
    // 0.15 × 2,000 = 300; 135 + 480 = 615; 315 cfm: 8 in.
    expect(finding?.why).toMatch(/^Column A/);
    expect(valueOf(finding, 'make-up air')).toBeCloseTo(si.cfm(315), 12);
    expect(valueOf(finding, 'passive opening')).toBe('8 in. round');
  });

  it.each([
    ['A', [heater('one', 'direct vent')]],
    ['B', [heater('one', 'fan assisted'), heater('two', 'direct vent')]],
    ['C', [heater('one', 'natural draft'), heater('two', 'fan assisted')]],
    ['D', [heater('one', 'natural draft'), heater('two', 'natural draft')]],
    ['A', []],
  ] as const)('has column %s by the appliances inside', (column, appliances) => {
    expect(screen(rule, screenedHouse({ appliances }))[0]?.why).toMatch(`Column ${column}:`);
  });

  it('drops exhaust whose supply is interlocked and matched', () => {
    const plain = screenedHouse();
    const fan = device({
      id: 'make-up fan',
      kind: 'supply fan',
      direction: 'supply',
      speeds: { on: si.cfm(600) },
      interlock: { driver: 'hood' },
    });
    const [finding] = screen(rule, { ...plain, devices: [...plain.devices, fan] });
    // 135 + 0.8 × 80 − 120 = 79 cfm.
    expect(valueOf(finding, 'make-up air')).toBeCloseTo(si.cfm(79), 12);
    expect(finding?.verdict).toBe('beyond the limit');
  });

  it('asks for nothing where the house is taken to leak as much as it exhausts', () => {
    const of = screenedHouse({
      floorAreaM2: si.ft2(4000),
      devices: [device({ id: 'dryer', kind: 'dryer', speeds: { on: si.cfm(150) } })],
    });
    expect(verdicts(rule, of)).toEqual(['within the limit']);
  });

  it('holds a built duct against the size, from its area or as stated', () => {
    const opening = (areaIn2: number) => ({
      id: 'duct',
      origin: 'makeUp.duct',
      zone: 'living room',
      to: { kind: 'outdoors' as const },
      heightM: 1,
      openLaw: { kind: 'orifice' as const, areaM2: si.in2(areaIn2), dischargeCoefficient: 0.6 },
      duringTest: 'closed' as const,
      interlock: { driver: 'hood' },
    });
    const of = (areaIn2: number) =>
      screenedHouse({
        appliances: [heater('one', 'direct vent')],
        makeUpOpenings: [opening(areaIn2)],
      });
    // 8 in. round is 50.3 in².
    expect(verdicts(rule, of(30))).toEqual(['beyond the limit']);
    expect(verdicts(rule, of(50.27))).toEqual(['near the limit']);
    expect(verdicts(rule, of(80))).toEqual(['within the limit']);
    // The narrowest part of a way counts: a hole of 80 in² behind a duct of 6 in.
    const duct = {
      kind: 'duct' as const,
      sections: [
        {
          lengthM: 3,
          hydraulicDiameterM: si.ft(0.5),
          areaM2: si.in2(28.27),
          roughnessM: 0.0001,
          frictionMultiplier: 1,
          lossCoefficient: 1,
        },
      ],
    };
    const behind = {
      ...of(80),
      makeUpOpenings: [{ ...opening(80), parts: [{ name: 'duct', law: duct, riseM: 0 }] }],
    };
    expect(verdicts(rule, behind)).toEqual(['beyond the limit']);
    const facts = { makeUp: { duct: { ductDiameterM: si.ft(0.75) } } };
    expect(verdicts(rule, of(30), { facts })).toEqual(['within the limit']);
  });
});

describe('the state’s table of passive openings', () => {
  it.each(['A', 'B', 'C', 'D'] as const)('rises from row to row in column %s', (column) => {
    const flows = minnesotaPassiveOpenings.map(({ largestCfm }) => largestCfm[column]);
    expect(flows).toHaveLength(9);
    expect(flows).toEqual([...flows].sort((one, other) => one - other));
    expect(new Set(flows).size).toBe(9);
  });

  it('gives less to a column of more delicate vents, in every row', () => {
    for (const { largestCfm } of minnesotaPassiveOpenings) {
      const { A, B, C, D } = largestCfm;
      expect(A > B && B > C && C > D).toBe(true);
    }
  });

  it('ends where powered make-up air begins', () => {
    expect(minnesotaPassiveOpening('A', si.cfm(679))?.diameterIn).toBe(11);
    expect(minnesotaPassiveOpening('A', si.cfm(680))).toBeUndefined();
    expect(minnesotaPassiveOpening('D', si.cfm(9))?.diameterIn).toBe(3);
    expect(minnesotaPassiveOpening('D', si.cfm(10))?.diameterIn).toBe(4);
    expect(minnesotaPassiveOpening('C', si.cfm(136))?.motorizedDamper).toBe(true);
  });
});

describe('an existing dwelling', () => {
  const table = (builtInYear: number) =>
    screen('minnesota-existing-dwelling', screenedHouse(), { facts: { builtInYear } })[0]?.why;

  it('belongs to a table by its year', () => {
    expect(table(2010)).toContain('Table 501.4.1');
    expect(table(1998)).toContain('Table 501.4.3(1)');
    expect(table(1970)).toContain('Table 501.4.3(2)');
    expect(screen('minnesota-existing-dwelling', screenedHouse())[0]?.give).toHaveLength(1);
  });

  it('is not judged by tables that were not reached, and says what to look up', () => {
    const [old] = screen('minnesota-existing-dwelling', screenedHouse(), {
      facts: { builtInYear: 1970 },
    });
    expect(old?.verdict).toBe('not judged');
    expect(old?.give.join()).toContain('Table 501.4.3(2), to be looked up');
    // The four factors often quoted, 0.25, 0.15, 0.10, 0.05 cfm/ft²: shown, marked, held against nothing.
    const factor = old?.arithmetic.find(({ label }) => label === 'pressure factor');
    expect(factor?.expression).toContain('unsure');
    const quoted = [0.25, 0.15, 0.1, 0.05].map((cfmPerFt2) => cfmPerFt2 * 0.00508);
    const { si: shown } = factor!.value as { si: number };
    expect(Math.min(...quoted.map((each) => Math.abs(each - shown)))).toBeLessThan(1e-9);
  });
});

describe('ventilation that runs all the time', () => {
  const of = (areaFt2: number, bedrooms?: number) =>
    screen(
      'minnesota-ventilation-rate',
      { ...screenedHouse(), floorAreaM2: si.ft(1) ** 2 * areaFt2 },
      { facts: bedrooms === undefined ? {} : { bedrooms } },
    )[0];

  it('is what two cells of the table that were read have, at the upper end of their rows', () => {
    for (const [areaFt2, totalCfm, halfCfm] of [
      [3000, 120, 60],
      [1500, 90, 45],
    ] as const) {
      const found = of(areaFt2, 3);
      const value = (label: string): number =>
        (found!.arithmetic.find((each) => each.label === label)!.value as { si: number }).si;
      expect(value('total')).toBeCloseTo(si.cfm(totalCfm), 9);
      expect(value('continuous')).toBeCloseTo(si.cfm(halfCfm), 9);
    }
  });

  it('asks for the bedrooms where they are not given', () => {
    expect(of(1500)?.give).toEqual(['the number of bedrooms']);
  });
});
