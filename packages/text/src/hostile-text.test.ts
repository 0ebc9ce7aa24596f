import { describe, expect, it } from 'vitest';

import { readDocument } from './read-document.js';

const mebibyte = 1024 * 1024;
const full = (piece: string): string => piece.repeat(Math.floor(mebibyte / piece.length));

/**
 * Texts at the size ceiling, each of which costs a careless reader minutes, all memory or the stack.
 *
 * The time limit that every test has is the assertion that none of them freezes a program.
 */
const hostile: Readonly<Record<string, string>> = {
  'open brackets': full('['),
  'open braces': full('{a: '),
  'nested items': full('- '),
  'nested questions': full('? '),
  'nested colons': full('a: '),
  'an ever deeper indent': Array.from(
    { length: 1400 },
    (_, depth) => `${' '.repeat(depth)}a:`,
  ).join('\n'),
  'a hundred thousand keys': Array.from({ length: 100_000 }, (_, index) => `k${index}: 1`).join(
    '\n',
  ),
  'twenty thousand equal keys': 'a: 1\n'.repeat(20_000),
  'references that multiply': ['a: &a [x, x, x, x, x, x, x, x, x]']
    .concat(Array.from({ length: 20 }, (_, i) => `b${i}: &b${i} [*a, *a, *a, *a, *a, *a, *a, *a]`))
    .join('\n'),
  quotes: full('"'),
  'quotes on lines': full("'\n"),
  'wrong escapes': `"${full('\\x').slice(2)}`,
  commas: `[${full(',').slice(1)}`,
  anchors: full('&a '),
  tags: full('!a '),
  documents: full('---\n'),
  directives: full('%a\n'),
  'lines of one word': full('a\n'),
  'empty lines': full('\n'),
  comments: full('#\n'),
  'numbers cut by commas': `{ a: ${'1,200,'.repeat(8_000)} }`,
  'a list of numbers cut by commas': `[${'1,200,'.repeat(8_000)}]`,
  'open comments': full('/*'),
  'one long number': '9'.repeat(90_000),
  'one long zero': `a: 0${'0'.repeat(90_000)}x`,
};

describe.each(['yaml', 'json'] as const)('a hostile text read as %s', (format) => {
  it.each(Object.entries(hostile))('of %s gets at most 51 issues, soon', (_, text) => {
    const result = readDocument(text, { file: 'x', format });
    if (!result.ok) {
      expect(result.issues.length).toBeGreaterThan(0);
      expect(result.issues.length).toBeLessThanOrEqual(51);
    } else {
      expect(typeof result.document.value).toBe('object');
    }
  });
});
