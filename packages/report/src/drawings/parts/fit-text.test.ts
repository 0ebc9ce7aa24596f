import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth, wrapLabel } from './fit-text.js';

describe('textWidth', () => {
  it('counts wide characters twice', () => {
    expect(textWidth('厨房', 10)).toBeGreaterThan(1.9 * textWidth('ab', 10));
  });
});

describe('wrapLabel', () => {
  it('leaves what fits on one line and breaks at blanks what does not', () => {
    expect(wrapLabel('kitchen', { width: 100, size: 12 })).toEqual(['kitchen']);
    expect(wrapLabel('utility room', { width: 50, size: 12 })).toEqual(['utility', 'room']);
  });

  it('breaks within a word that no line has room for, and never within what is read as one', () => {
    expect(wrapLabel('abcdefghij', { width: 36, size: 12 })).toEqual(['abcde', 'fghij']);
    const family = '👩‍👩‍👧';
    const lines = wrapLabel(family.repeat(4), { width: 40, size: 12 });
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line.replaceAll(family, '')).toBe('');
  });

  it('takes away what could turn the direction of writing', () => {
    expect(wrapLabel('a\u202eb', { width: 100, size: 12 })).toEqual(['a\ufffdb']);
  });

  it('keeps every letter of any name, each line within the width', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 80 }),
        fc.integer({ min: 40, max: 400 }),
        (name, width) => {
          const lines = wrapLabel(name, { width, size: 12 });
          const solid = (text: string): string =>
            text.replace(/[\s\p{Cc}\u200e\u200f\ufffd]/gu, '');
          fc.pre(solid(name) === name);
          expect(solid(lines.join(''))).toBe(name);
          for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(width);
        },
      ),
      { seed: 7310, numRuns: 200 },
    );
  });

  it('ends a text that no house file can hold with an ellipsis', () => {
    expect(wrapLabel('x'.repeat(5000), { width: 400, size: 12 }).at(-1)).toMatch(/…$/u);
  });
});
