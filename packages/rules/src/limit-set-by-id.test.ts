import { formatIssue } from '@evendraft/text';
import { describe, expect, it } from 'vitest';
import { limitSetById } from './limit-set-by-id.js';
import { limitSetIssues } from './limit-set-issues.js';
import { limitSets } from './limit-sets.js';
import { unknownLimitSet } from './unknown-limit-set.js';

describe('a limit set by its id', () => {
  it('is the set of that id, or nothing', () => {
    for (const set of limitSets) expect(limitSetById(set.id)).toBe(set);
    expect(limitSetById('Vent-Type-Table')).toBeUndefined();
    expect(limitSetById('')).toBeUndefined();
  });

  it('is suggested where a near one was meant', () => {
    expect(unknownLimitSet('germany-4pa').parameters['suggestion']).toBe('germany-4-pa');
    expect(formatIssue(unknownLimitSet('canda-5-pa'), limitSetIssues)).toBe(
      'there is no limit set "canda-5-pa"; there are vent-type-table, model-code-2015, chimney-height-table, rater-guideline-2010, canada-5-pa, germany-4-pa, spillage-and-co-2015, fuel-gas-code-2012, canada-f326-1991, canada-venting-screen, oil-heat-manual, united-kingdom-extract, appliance-standards; perhaps "canada-5-pa".',
    );
    expect(unknownLimitSet('none').parameters).not.toHaveProperty('suggestion');
  });
});
