import { describe, expect, it } from 'vitest';
import { fitText, textWidth, wrapLabel } from './fit-text.js';

describe('fitText', () => {
  it('leaves what fits and cuts what does not with an ellipsis', () => {
    expect(fitText('kitchen', 100, 12)).toBe('kitchen');
    const cut = fitText('utility room beside the kitchen', 100, 12);
    expect(cut).toMatch(/^utility.*…$/u);
    expect(textWidth(cut, 12)).toBeLessThanOrEqual(100);
  });

  it('counts wide characters twice and never splits one', () => {
    expect(textWidth('厨房', 10)).toBeGreaterThan(1.9 * textWidth('ab', 10));
    expect(fitText('👩‍👩‍👧👩‍👩‍👧👩‍👩‍👧', 40, 12)).toMatch(/^(?:👩‍👩‍👧)*…$/u);
  });

  it('takes away what could turn the direction of writing', () => {
    expect(fitText('a\u202eb', 100, 12)).toBe('a\ufffdb');
  });
});

describe('wrapLabel', () => {
  it('breaks at blanks and cuts the last line', () => {
    expect(wrapLabel('utility room', { width: 50, size: 12, lines: 2 })).toEqual([
      'utility',
      'room',
    ]);
    const lines = wrapLabel('a long name of a room that nobody can read', {
      width: 60,
      size: 12,
      lines: 2,
    });
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/…$/u);
  });
});
