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
