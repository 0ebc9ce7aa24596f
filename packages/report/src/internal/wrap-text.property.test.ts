import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { displayWidth } from './display-width.js';
import { plainText } from './plain-text.js';
import { wrapText } from './wrap-text.js';

const seed = 41;

describe('wrapText, for any text', () => {
  it('keeps every line within the width and loses nothing but white space', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 120 }),
        fc.integer({ min: 4, max: 90 }),
        (text, width) => {
          const lines = wrapText(text, { width, first: '- ', rest: '  ' });
          for (const line of lines) expect(displayWidth(line)).toBeLessThanOrEqual(width);
          const put = lines.map((line) => line.slice(2)).join('');
          const asked = plainText(text);
          expect(put.replace(/\s/gu, '')).toBe(asked.replace(/\s/gu, ''));
        },
      ),
      { seed },
    );
  });
});
