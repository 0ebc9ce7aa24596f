import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { formatIssue } from './format-issue.js';
import { readDocument } from './read-document.js';
import { textIssues } from './text-issues.js';

const seed = 20260403;
const reserved = new Set(['__proto__', 'constructor', 'prototype']);

/** Texts made of what YAML and JSON are made of, so that deep branches are reached. */
const nearlyYaml = fc
  .array(
    fc.constantFrom(
      ...[
        'a',
        'b: ',
        ': ',
        ':',
        '- ',
        '-',
        '? ',
        '\n',
        '\n  ',
        '\n\t',
        ' ',
        ',',
        '[',
        ']',
        '{',
        '}',
      ],
      ...[
        '"',
        "'",
        '#',
        ' #',
        '&x ',
        '*x',
        '!t ',
        '|',
        '>',
        '%Y',
        '@',
        '`',
        '---\n',
        '...\n',
        '<<',
      ],
      ...[
        '1',
        '1,200 cfm',
        '010',
        '0x1',
        '.inf',
        '1e999',
        '~',
        'true',
        '\\',
        '\\n',
        '\r\n',
        'é',
        '😀',
      ],
      ...['\u0000', '\ufeff', '\u2028', '__proto__', '//', '/*', '"a": ', 'null'],
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(''));
const anyText = fc.oneof(
  { weight: 3, arbitrary: nearlyYaml },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 200 }) },
);
const format = fc.constantFrom('yaml', 'json');

describe('readDocument, on generated texts', () => {
  it('never throws, and places every issue inside the text', () => {
    fc.assert(
      fc.property(anyText, format, (text, as) => {
        const result = readDocument(text, { file: 'x', format: as });
        const lines = (text.startsWith('\ufeff') ? text.slice(1) : text).split('\n');
        for (const issue of result.ok ? result.warnings : result.issues) {
          const { line, column } = issue.position ?? { line: 0, column: 0 };
          expect(line).toBeGreaterThanOrEqual(1);
          expect(line).toBeLessThanOrEqual(lines.length);
          expect(column).toBeGreaterThanOrEqual(1);
          expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1);
          expect(textIssues.has(issue.code)).toBe(true);
          // No control character, not even a line end, gets from the text into the message.
          expect(formatIssue(issue, textIssues)).toMatch(/^x:\d+:\d+: \P{Cc}+$/u);
        }
        expect(result.ok || result.issues.length > 0).toBe(true);
      }),
      { seed, numRuns: 2000 },
    );
  });

  it('never throws on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), format, (bytes, as) => {
        const result = readDocument(bytes, { file: 'x', format: as });
        expect(result.ok || result.issues.length > 0).toBe(true);
      }),
      { seed, numRuns: 2000 },
    );
  });

  it('gives a place and a scalar for every part of what it read', () => {
    fc.assert(
      fc.property(nearlyYaml, (text) => {
        const result = readDocument(text, { file: 'x' });
        if (!result.ok) return;
        const visit = (value: unknown, path: readonly (string | number)[]): void => {
          expect(result.document.locate(path)).toBeDefined();
          expect(result.document.locate(path, 'key')).toBeDefined();
          if (Array.isArray(value)) value.forEach((item, index) => visit(item, [...path, index]));
          else if (typeof value === 'object' && value !== null) {
            for (const [key, item] of Object.entries(value)) visit(item, [...path, key]);
          } else expect(result.document.scalarAt(path)).toBeDefined();
        };
        visit(result.document.value, []);
      }),
      { seed, numRuns: 2000 },
    );
  });
});

/** JSON data below the ceilings, without keys that are refused on purpose and -0, which JSON loses. */
const data = fc
  .jsonValue({ maxDepth: 5 })
  .filter((value) => typeof value === 'object' && value !== null)
  .filter((value) => !hasReservedKey(value));

describe('readDocument, on generated JSON', () => {
  it('reads what JSON.parse reads, as JSON and as YAML', () => {
    fc.assert(
      fc.property(data, fc.constantFrom(undefined, 2), (value, indent) => {
        const text = JSON.stringify(value, undefined, indent);
        const expected: unknown = JSON.parse(text);
        // YAML takes neither control characters nor unpaired surrogates, and no more do we.
        fc.pre(!/(?!\n)\p{Cc}|[\ufffe\uffff]|\\ud/iu.test(text));
        for (const as of ['json', 'yaml'] as const) {
          const result = readDocument(text, { file: 'x', format: as });
          expect(result.ok && result.document.value).toEqual(expected);
        }
      }),
      { seed, numRuns: 1000 },
    );
  });

  it('refuses, as JSON, everything that JSON.parse refuses', () => {
    const damage = fc.tuple(
      data,
      fc.nat(),
      fc.nat(3),
      fc.constantFrom('', ',', '"', '}', '1', '\\', '#'),
    );
    fc.assert(
      fc.property(damage, ([value, place, dropped, inserted]) => {
        const whole = JSON.stringify(value);
        const at = place % (whole.length + 1);
        const text = whole.slice(0, at) + inserted + whole.slice(at + dropped);
        const result = readDocument(text, { file: 'x', format: 'json' });
        if (result.ok) expect(result.document.value).toEqual(JSON.parse(text));
        else {
          const refusedByUs = result.issues.every(({ code }) => onlyOurs.has(code));
          expect(refusedByUs || !isJson(text)).toBe(true);
        }
      }),
      { seed, numRuns: 2000 },
    );
  });
});

/** What JSON allows and we refuse. */
const onlyOurs = new Set([
  'text.duplicate-key',
  'text.reserved-key',
  'text.bare-value',
  'text.not-finite',
  'text.control-character',
]);

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

function hasReservedKey(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([key, item]) => reserved.has(key) || hasReservedKey(item));
}
