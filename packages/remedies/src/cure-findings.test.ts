import { modelledFlows, parseHouse, type House } from '@evendraft/house';
import { defaultLimitSet } from '@evendraft/rules';
import { beforeAll, describe, expect, it } from 'vitest';
import { inventedRow } from '../test-data/invented-row.js';
import { cureFindings, type CuredFinding } from './cure-findings.js';

describe('cures of a finding', () => {
  let cured: readonly CuredFinding[];
  beforeAll(async () => {
    cured = (await cureFindings(inventedRow(), defaultLimitSet)).findings;
  }, 60_000);

  it('are solved again one by one, in the order in which they are tried', () => {
    expect(cured).toHaveLength(1);
    const { finding, cures } = cured[0]!;
    expect(finding.verdict).toBe('beyond the limit');
    expect(cures.map(({ cure }) => cure.split(' ').slice(0, 2).join(' '))).toEqual([
      'Replace the',
      'Cap the',
      'Keep exhaust',
      'Lock out',
      'Bring in',
      'Bring in',
      'Change the',
    ]);
  });

  it('show the number after the cure, each better than before it', () => {
    const { finding, cures } = cured[0]!;
    for (const { after } of cures.slice(0, -1)) {
      expect(after.judged!.limitPa).toBe(finding.judged!.limitPa);
      expect(after.judged!.marginPa).toBeGreaterThan(finding.judged!.marginPa);
    }
    // With sealed combustion the same pressure meets another limit.
    const sealed = cures.at(-1)!.after;
    expect(sealed.judged!.valuePa).toBeCloseTo(finding.judged!.valuePa, 6);
    expect(sealed.judged!.limitPa).toBeLessThan(finding.judged!.limitPa);
    expect(sealed.verdict).toBe('within the limit');
  });

  it('are none where the finding is within its limit', async () => {
    const leaky = inventedRow({ airtightness: '30000 cfm at 50 Pa' });
    const {
      findings: [only],
      makeUpCurves,
    } = await cureFindings(leaky, defaultLimitSet);
    expect(makeUpCurves).toBeUndefined();
    expect(only!.finding.verdict).toBe('within the limit');
    expect(only!.cures).toEqual([]);
  });
});

describe('an appliance changed to sealed combustion after the airtightness test', () => {
  it('leaves the house tighter by its flue, so that the suction grows', async () => {
    const open = inventedRow({
      airtightness: '400 cfm at 50 Pa',
      appliances: {
        'water heater': {
          vent: 'natural draft',
          fuel: 'gas',
          input: '40 kBtu/h',
          flue: { height: '20 ft', diameter: '4 in', construction: 'double wall' },
        },
      },
    });
    const { findings } = await cureFindings(open, defaultLimitSet);
    const { finding, cures } = findings[0]!;
    const sealed = cures.find(
      ({ cure }) => cure === 'Change the water heater to sealed combustion.',
    );
    expect(sealed!.after.judged!.valuePa).toBeLessThan(finding.judged!.valuePa - 1);
    // As a house of which the file says what the leaks alone pass: the test less what went through the flue.
    const throughFlue = modelledFlows(open, 50).find(({ item }) => item === 'flues');
    if (throughFlue?.status !== 'solved') throw new Error('no flow through the flue');
    const { appliances, airtightness } = open;
    const [tested] = airtightness.cases;
    const leaksM3PerS = tested!.volumeFlowM3PerS - throughFlue.volumeFlowM3PerS;
    const { flue: _, ...heater } = appliances[0]!;
    const alone = await cureFindings(
      {
        ...open,
        airtightness: { ...airtightness, cases: [{ ...tested!, volumeFlowM3PerS: leaksM3PerS }] },
        appliances: [heater],
      },
      defaultLimitSet,
    );
    expect(sealed!.after.judged!.valuePa).toBeCloseTo(
      alone.findings[0]!.finding.judged!.valuePa,
      6,
    );
  }, 60_000);
});

describe('cures made together', () => {
  /** So tight that the ventilator, which no cure takes away, is beyond the limit of an orphaned water heater. */
  const tight = inventedRow({
    airtightness: '120 cfm at 50 Pa',
    exhaust: { hood: { low: '50 cfm', high: '600 cfm' }, dryer: '150 cfm' },
    ventilators: { 'whole house': { exhaust: '60 cfm', supply: '20 cfm' } },
  });

  it('are solved where none by itself is enough, and end with the first that is', async () => {
    const {
      findings: [only],
    } = await cureFindings(tight, defaultLimitSet);
    const alone = only!.cures.filter(({ together }) => together !== true);
    const together = only!.cures.filter((each) => each.together === true);
    expect(alone.map(({ after }) => after.verdict)).not.toContain('within the limit');
    expect(together.map(({ after }) => after.verdict)).toEqual([
      'beyond the limit',
      'within the limit',
    ]);
    expect(together[0]!.cure).toBe(
      'Cap the hood at low and replace the dryer with one that exhausts no air.',
    );
    expect(together[1]!.cure).toBe(
      'Cap the hood at low, replace the dryer with one that exhausts no air and change the water heater to sealed combustion.',
    );
  }, 60_000);
});

/** Synthetic, made for this project: a small tight house with a water heater on a wide cold chimney. */
function orphan(chimney: Readonly<Record<string, unknown>>): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Test Cold Stack 6',
    floorArea: '1200 ft2',
    airtightness: '700 cfm at 50 Pa',
    exhaust: { hood: '300 cfm' },
    appliances: {
      'water heater': {
        vent: 'natural draft',
        fuel: 'gas',
        input: '36 kBtu/h',
        flue: {
          height: '20 ft',
          exteriorShare: '60 %',
          connector: { length: '6 ft', rise: '1 ft', diameter: '4 in', elbows: 2 },
          draftHood: { reliefArea: '18 in2' },
          ...chimney,
        },
      },
    },
    weather: [{ name: 'mild', outdoorTemperature: '55 F' }],
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

describe('cures of a flue', () => {
  const cold = orphan({ size: ['8 in', '8 in'], construction: 'masonry lined' });
  let cured: readonly CuredFinding[];
  beforeAll(async () => {
    ({ findings: cured } = await cureFindings(cold, defaultLimitSet, {
      flues: { appliances: ['water heater'], limitSets: [defaultLimitSet] },
    }));
  }, 60_000);

  const after = (begins: string) => {
    const found = cured[0]!.cures.find(({ cure }) => cure.startsWith(begins))?.draft;
    if (found === undefined) throw new Error(`no flue after: ${begins}`);
    return found;
  };

  it('have the verdict, draft and spillage of the flue after each cure', () => {
    const { cures } = cured[0]!;
    expect(cures.length).toBeGreaterThan(3);
    for (const { cure, draft } of cures.slice(0, -1)) {
      expect(draft?.verdict, cure).toBeDefined();
      const subjects = draft!.findings.map(({ about }) => about);
      expect(subjects, cure).toEqual(expect.arrayContaining(['draft', 'spillage time']));
    }
    const draftWith = (begins: string): number =>
      after(begins).findings.find(({ about }) => about === 'draft')!.found!;
    // Without the hood nothing sucks: it draws more strongly, which is the lower number.
    expect(draftWith('Lock out')).toBeLessThan(draftWith('Line') - 1);
  });

  it('leave no flue to judge where the appliance is sealed', () => {
    const { verdict, why, findings } = after('Change the water heater');
    expect(verdict).toBeUndefined();
    expect(why).toContain('no flue');
    expect(findings).toEqual([]);
  });
});
