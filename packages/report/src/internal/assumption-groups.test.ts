import { describe, expect, it } from 'vitest';
import { assumptions } from '../../fixtures/invented-parts.js';
import { assumptionGroups } from './assumption-groups.js';
import { numberPrinter } from './number-printer.js';

describe('assumptionGroups', () => {
  const groups = assumptionGroups(assumptions, numberPrinter('us'));

  it('puts what moves the answer most first', () => {
    expect(groups.map(({ what }) => what)).toEqual([
      'flow exponent',
      'shut-off pressure',
      'leakage distribution',
      'ceiling height',
    ]);
  });

  it('puts the same value from the same source together, with every item it is for', () => {
    expect(groups[1]).toEqual({
      what: 'shut-off pressure',
      value: '400 Pa',
      origins: ['exhaust.hood', 'exhaust.dryer'],
      source: 'Typical fan curve (our choice)',
      status: 'our choice',
    });
  });

  it('has every assumption in exactly one group', () => {
    expect(groups.flatMap(({ origins }) => origins)).toHaveLength(assumptions.length);
  });

  it('says a status only once where the document is no more than that', () => {
    expect(groups[0]?.source).toBe('common practice, no source');
  });
});
