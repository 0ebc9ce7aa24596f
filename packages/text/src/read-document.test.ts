import { describe, expect, it } from 'vitest';

import { formatIssue } from './format-issue.js';
import type { IssuePath } from './issue.js';
import { readDocument, type ReadDocumentResult } from './read-document.js';
import type { TextDocument } from './text-document.js';
import type { TextIssueCode } from './text-issue-code.js';
import { textIssues } from './text-issues.js';

const kibibyte = 1024;

/** Code, text, line and column where a person should look, and path if there is one. */
type Case = readonly [TextIssueCode, string | Uint8Array, string, IssuePath?];

const yamlCases: readonly Case[] = [
  ['text.too-large', 'a'.repeat(kibibyte * kibibyte + 1), '1:1'],
  ['text.too-deep', `a: ${'['.repeat(40)}${']'.repeat(40)}`, '1:35'],
  ['text.too-deep', '- '.repeat(40), '1:65'],
  ['text.too-many-values', `[${'1,'.repeat(60_000)}1]`, '1:100000'],
  ['text.too-long-value', `a: ${'x'.repeat(100_001)}`, '1:4'],
  ['text.not-utf-8', Uint8Array.of(0x61, 0x3a, 0x20, 0x0a, 0xc3, 0x28), '2:1'],
  ['text.not-utf-8', Uint8Array.of(0xef, 0xbf, 0xbd, 0x0a, 0x61, 0xff), '2:2'],
  ['text.control-character', 'a: 1\nb: \u0000', '2:4'],
  ['text.control-character', 'a: \ud800', '1:4'],
  ['text.more-issues', Array.from({ length: 60 }, () => '- 010').join('\n'), '51:3'],
  ['text.empty', '', '1:1'],
  ['text.empty', '\ufeff', '1:1'],
  ['text.empty', '# a house\n\n# without a word\n', '1:1'],
  ['text.empty', '---\n', '1:1'],
  ['text.bare-value', 'Alder Row 14', '1:1'],
  ['text.bare-value', '\n"900"', '2:1'],
  ['text.tag', 'a: !!js/function x', '1:4'],
  ['text.tag', 'a: 1\nb: !important', '2:4'],
  ['text.anchor', 'a: &x 1', '1:4'],
  ['text.anchor', 'a: *x', '1:4'],
  ['text.anchor', '*x : 1', '1:1'],
  ['text.merge-key', 'a:\n  <<: {b: 1}', '2:3', ['a']],
  ['text.several-documents', 'a: 1\n---\nb: 2', '2:1'],
  ['text.directive', '%TAG ! x\n---\na: 1', '1:1'],
  ['text.directive', '%YAML 1.1\n---\na: 1', '1:1'],
  ['text.duplicate-key', 'a: 1\nb:\n  c: 1\n  c: 2', '4:3', ['b', 'c']],
  ['text.duplicate-key', '{2: a, "2": b}', '1:8', ['2']],
  ['text.reserved-key', '__proto__: { x: 1 }', '1:1', ['__proto__']],
  ['text.reserved-key', 'a: {constructor: 1}', '1:5', ['a', 'constructor']],
  ['text.empty-key', ': x', '1:1'],
  ['text.complex-key', '? [a, b]\n: c', '1:3'],
  ['text.key-too-long', `${'k'.repeat(1100)}: 1`, '1:1'],
  ['text.key-spans-lines', '"a\n b": 1', '1:1'],
  ['text.number-form', 'a: 010', '1:4', ['a']],
  ['text.number-form', 'a: [1, 0x10]', '1:8', ['a', 1]],
  ['text.number-form', 'a: 0o17', '1:4', ['a']],
  ['text.number-form', 'a: 0b11', '1:4', ['a']],
  ['text.not-finite', 'a: .nan', '1:4', ['a']],
  ['text.not-finite', 'a: -.inf', '1:4', ['a']],
  ['text.not-finite', 'a: 1e999', '1:4', ['a']],
  ['text.number-split-by-comma', 'a: { high: 1,200 cfm }', '1:12', ['a', 'high']],
  ['text.number-split-by-comma', 'a: { high: 1,200 }', '1:12', ['a', 'high']],
  ['text.number-split-by-comma', 'a: { in: 1,234,567 Btu/h, b: 2 }', '1:10', ['a', 'in']],
  ['text.number-split-by-comma', 'a: [5 Pa, 1,200 cfm]', '1:11', ['a', 1]],
  ['text.number-split-by-comma', 'a: [1,234,567 Btu/h]', '1:5', ['a', 0]],
  ['text.space-after-colon', 'a: { low:250 cfm }', '1:6', ['a', 'low:250 cfm']],
  ['text.space-after-colon', 'a: 1\nb:2\nc: 3', '2:1'],
  ['text.colon-in-value', 'a: b: c', '1:4'],
  ['text.colon-in-value', '{a: b: c}', '1:5'],
  ['text.tab', 'a:\n\tb: 1', '2:1'],
  ['text.indent', 'a:\n  b: 1\n c: 2', '3:1'],
  ['text.indent', 'a: 1\n  b: 2', '2:3'],
  ['text.unclosed', 'a: 1\nb: "x\nc: 2', '2:4'],
  ['text.unclosed', "a: 'x", '1:4'],
  ['text.unclosed', 'a: {b: [1, 2}', '1:8'],
  ['text.unclosed', 'a: {b: 1\nc: 2', '1:4'],
  ['text.comma-missing', 'a: ["x" "y"]', '1:9'],
  ['text.comma-unexpected', 'a: [1,,2]', '1:7'],
  ['text.colon-missing', 'a: 1\nhood\nb: 2', '2:1'],
  ['text.reserved-start', 'a: @home', '1:4'],
  ['text.reserved-start', 'a: `x`', '1:4'],
  ['text.escape', 'a: "C:\\queue"', '1:7'],
  ['text.comment-space', 'a: "x"#c', '1:7'],
  ['text.block-in-flow', 'a: [- b]', '1:5'],
  ['text.syntax', 'a: "x" y', '1:8'],
  ['text.syntax', 'a: 1\n- b', '2:1'],
  ['text.syntax', '}', '1:1'],
];

const jsonCases: readonly Case[] = [
  ['text.empty', ' \n ', '1:1'],
  ['text.bare-value', '900', '1:1'],
  ['text.too-deep', '['.repeat(1_000_000), '1:33'],
  ['text.too-many-values', `[${'1,'.repeat(60_000)}1]`, '1:100000'],
  ['text.too-long-value', `["${'x'.repeat(100_001)}"]`, '1:2'],
  ['text.control-character', '["\u0000"]', '1:3'],
  ['text.duplicate-key', '{"a": 1,\n "a": 2}', '2:2', ['a']],
  ['text.reserved-key', '{"__proto__": 1}', '1:2', ['__proto__']],
  ['text.unclosed', '{"a": [1, 2', '1:7'],
  ['text.unclosed', '{"a', '1:2'],
  ['text.unclosed', '["a\nb"]', '1:2'],
  ['text.escape', '["\\q"]', '1:3'],
  ['text.escape', '["\\u12"]', '1:3'],
  ['text.not-finite', '[1e999]', '1:2'],
  ['text.json-comment', '{ // why\n "a": 1}', '1:3'],
  ['text.json-comment', '{"a": /* why */ 1}', '1:7'],
  ['text.json-comment', '# why\n{"a": 1}', '1:1'],
  ['text.json-trailing-comma', '{"a": 1,}', '1:8'],
  ['text.json-trailing-comma', '[1,\n]', '1:3'],
  ['text.json-quotes', '{a: 1}', '1:2'],
  ['text.json-quotes', "{'a': 1}", '1:2'],
  ['text.json-quotes', "['a']", '1:2'],
  ['text.json-word', '[yes]', '1:2'],
  ['text.json-word', '[NaN]', '1:2'],
  ['text.json-word', '[toString]', '1:2'],
  ['text.json-number', '[010]', '1:2'],
  ['text.json-number', '[0x10]', '1:2'],
  ['text.json-number', '[+1]', '1:2'],
  ['text.json-number', '[.5]', '1:2'],
  ['text.json-number', '[5.]', '1:2'],
  ['text.json-syntax', '[1 2]', '1:4'],
  ['text.json-syntax', '{"a" 1}', '1:6'],
  ['text.json-syntax', '{"a": 1} {}', '1:10'],
  ['text.json-syntax', '["a\tb"]', '1:4'],
  ['text.json-syntax', '[,1]', '1:2'],
];

describe('readDocument refuses', () => {
  for (const [file, cases] of [
    ['house.yaml', yamlCases],
    ['house.json', jsonCases],
  ] as const) {
    for (const [code, text, place, path] of cases) {
      it(`${JSON.stringify(text).slice(0, 40)} in ${file}, at ${place}: ${code}`, () => {
        const issues = issuesOf(readDocument(text, { file }));
        const issue = issues.find((candidate) => candidate.code === code);
        expect(issue, issues.map((one) => one.code).join()).toBeDefined();
        expect(`${issue?.position?.line}:${issue?.position?.column}`).toBe(place);
        expect(issue?.path).toEqual(path ?? []);
        expect(issue?.file).toBe(file);
        expect(issue?.severity).toBe('error');
      });
    }
  }

  it('with one issue only, where there is one fault', () => {
    const single = [...yamlCases, ...jsonCases].filter(([code]) => code !== 'text.more-issues');
    for (const [code, text, place] of single) {
      const results = [yamlCases, jsonCases].flatMap((cases) =>
        cases.some((one) => one[1] === text && one[0] === code && one[2] === place)
          ? [readDocument(text, { file: cases === yamlCases ? 'a.yaml' : 'a.json' })]
          : [],
      );
      for (const result of results) expect(issuesOf(result).map((one) => one.code)).toEqual([code]);
    }
  });

  it('several faults at once, in the order of the text', () => {
    const text = ['a: 010', 'b: { c: 1,200 cfm }', 'a: "x" y', 'd: !x 1', 'e: @'].join('\n');
    const issues = issuesOf(readDocument(text, { file: 'house.yaml' }));
    expect(issues.map(({ code, position }) => `${position?.line} ${code}`)).toEqual([
      '1 text.number-form',
      '2 text.number-split-by-comma',
      '3 text.duplicate-key',
      '3 text.syntax',
      '4 text.tag',
      '5 text.reserved-start',
    ]);
  });

  it('a text over its ceiling before anything is read', () => {
    const nonsense = new Uint8Array(10 * kibibyte * kibibyte).fill(0xff);
    expect(issuesOf(readDocument(nonsense, { file: 'x' }))[0]?.code).toBe('text.too-large');
  });

  it('a text whose ceiling the caller lowered', () => {
    const codeWith = (text: string, limits: object): string | undefined =>
      issuesOf(readDocument(text, { file: 'x', limits }))[0]?.code;
    expect(codeWith('é: 1', { maxBytes: 4 })).toBe('text.too-large');
    expect(codeWith('a: {b: 1}', { maxDepth: 1 })).toBe('text.too-deep');
    expect(codeWith('a: [1, 2, 3]', { maxNodes: 4 })).toBe('text.too-many-values');
    expect(codeWith('a: bcdef', { maxScalarLength: 4 })).toBe('text.too-long-value');
    expect(codeWith('é: 1', { maxBytes: 5, maxDepth: 1, maxNodes: 2, maxScalarLength: 1 })).toBe(
      undefined,
    );
  });
});

describe('readDocument warns', () => {
  it.each(['a: 12345678901234567', '{"a": 12345678901234567}'])('of %s, and reads it', (text) => {
    const result = readDocument(text, { file: text.startsWith('{') ? 'a.json' : 'a.yaml' });
    expect(result.ok && result.warnings.map(({ code, path }) => [code, path])).toEqual([
      ['text.inexact-number', ['a']],
    ]);
  });
});

describe('the catalogue of issues', () => {
  // Produced in read-csv.test.ts.
  const csvCodes = ['text.csv-quote', 'text.csv-cells', 'text.csv-column'];

  it('has no code that no case above produces', () => {
    const produced = new Set([...yamlCases, ...jsonCases].map(([code]) => code));
    const elsewhere = ['text.inexact-number', ...csvCodes];
    expect([...produced, ...elsewhere].toSorted()).toEqual([...textIssues.keys()].toSorted());
  });

  it('has words without holes and a remedy for every case', () => {
    for (const [index, [, text]] of [...yamlCases, ...jsonCases].entries()) {
      const file = index < yamlCases.length ? 'house.yaml' : 'house.json';
      for (const issue of issuesOf(readDocument(text, { file }))) {
        const line = formatIssue(issue, textIssues);
        expect(line).toMatch(/^house\.(?:yaml|json):\d+:\d+: \S.*[.]$/);
        expect(line).not.toMatch(/undefined|null,|\[object|""/);
        expect(textIssues.get(issue.code)?.remedy).toMatch(/^[A-Z].*\.$/);
      }
    }
  });
});

describe('readDocument reads', () => {
  const house = [
    'evendraft: 1',
    'name: Alder Row 14 # invented',
    'exhaust:',
    '  hood: { low: 250 cfm, high: "1,200 cfm" }',
    '  hall bath:',
    '    flows: [80, 1.50, -2e1, .5]',
    '  2: 1,200 cfm',
    'sealed: yes',
    'on: true',
    'none:',
    'note: |-',
    '  two',
    '  lines',
  ].join('\n');

  it('a house in YAML as plain data', () => {
    expect(documentOf(house).value).toEqual({
      evendraft: 1,
      name: 'Alder Row 14',
      exhaust: {
        hood: { low: '250 cfm', high: '1,200 cfm' },
        'hall bath': { flows: [80, 1.5, -20, 0.5] },
        '2': '1,200 cfm',
      },
      sealed: 'yes',
      on: true,
      none: null,
      note: 'two\nlines',
    });
  });

  it('the same data from JSON', () => {
    const { value } = documentOf(house);
    expect(documentOf(JSON.stringify(value, undefined, 2), 'house.json').value).toEqual(value);
    expect(documentOf(JSON.stringify(value), 'house.yaml').value).toEqual(value);
  });

  it.each([
    [['exhaust', 'hood', 'high'], 'value', '4:31'],
    [['exhaust', 'hood', 'high'], 'key', '4:25'],
    [['exhaust', 'hall bath', 'flows', 1], 'value', '6:17'],
    [['exhaust', 'hall bath', 'flows', 1], 'key', '6:17'],
    [['exhaust', 2], 'key', '7:3'],
    [['none'], 'value', '10:1'],
    [['note'], 'value', '11:7'],
    [[], 'value', '1:1'],
    [['exhaust', 'hood', 'medium'], 'value', undefined],
    [['exhaust', 'hall bath', 'flows', 4], 'value', undefined],
    [['exhaust', 'hall bath', 'flows', 'length'], 'value', undefined],
    [['name', 0], 'value', undefined],
  ] as const)('the place of %j (%s): %s', (path, part, place) => {
    const position = documentOf(house).locate(path, part);
    expect(position && `${position.line}:${position.column}`).toBe(place);
  });

  it('the place of keys and values in JSON', () => {
    const document = documentOf('{\n  "hood": {"high": 900}\n}', 'house.json');
    expect(document.locate(['hood', 'high'], 'key')).toEqual({ line: 2, column: 12 });
    expect(document.locate(['hood', 'high'])).toEqual({ line: 2, column: 20 });
  });

  it('what was typed, and whether it was quoted', () => {
    const document = documentOf(house);
    expect(document.scalarAt(['exhaust', 'hall bath', 'flows', 1])).toEqual({
      text: '1.50',
      quoted: false,
    });
    expect(document.scalarAt(['exhaust', 'hood', 'high'])).toEqual({
      text: '1,200 cfm',
      quoted: true,
    });
    expect(document.scalarAt(['none'])).toEqual({ text: '', quoted: false });
    expect(document.scalarAt(['exhaust'])).toBeUndefined();
    const json = documentOf('{"a": 1.50e2, "b": "1\\u0032"}', 'house.json');
    expect(json.scalarAt(['a'])).toEqual({ text: '1.50e2', quoted: false });
    expect(json.scalarAt(['b'])).toEqual({ text: '12', quoted: true });
  });

  it('quoted values as text, whatever they look like', () => {
    expect(documentOf(`a: "010"\nb: '.inf'\nc: "true"\nd: ""`).value).toEqual({
      a: '010',
      b: '.inf',
      c: 'true',
      d: '',
    });
  });

  it('what only looks like a number split by its comma', () => {
    expect(documentOf('a: [1, 200 cfm]').value).toEqual({ a: [1, '200 cfm'] });
    expect(documentOf('a: [100,200]').value).toEqual({ a: [100, 200] });
    expect(documentOf('a: [1,20 cfm]').value).toEqual({ a: [1, '20 cfm'] });
    expect(documentOf('a: { b: 1, 200 cfm: }').value).toEqual({ a: { b: 1, '200 cfm': null } });
    expect(documentOf('a: { b: 1,c: 2 }').value).toEqual({ a: { b: 1, c: 2 } });
  });

  it('bytes with a byte order mark and Windows line ends, at the same places', () => {
    const bytes = new TextEncoder().encode(`\ufeff${house.replaceAll('\n', '\r\n')}\r\n`);
    const document = documentOf(bytes);
    expect(document.value).toEqual(documentOf(house).value);
    expect(document.locate(['exhaust', 'hood', 'high'])).toEqual({ line: 4, column: 31 });
    expect(document.locate(['evendraft'], 'key')).toEqual({ line: 1, column: 1 });
  });

  it('a YAML directive of the version it reads, and a document marker', () => {
    expect(documentOf('%YAML 1.2\n---\na: 1\n...\n').value).toEqual({ a: 1 });
  });

  it('keys that every object inherits as data of its own', () => {
    const { value } = documentOf('toString: 1\nhasOwnProperty: 2');
    expect(Object.entries(value as object)).toEqual([
      ['toString', 1],
      ['hasOwnProperty', 2],
    ]);
  });

  it('the format that the caller names, whatever the file is called', () => {
    const asJson = readDocument('a: 1', { file: 'house.yaml', format: 'json' });
    const asYaml = readDocument('a: 1', { file: 'house.json', format: 'yaml' });
    expect([asJson.ok, asYaml.ok]).toEqual([false, true]);
  });
});

describe('readDocument throws', () => {
  it.each([{ maxBytes: 0 }, { maxNodes: Number.NaN }, { maxDepth: 201 }])(
    'on the ceilings %j',
    (limits) => {
      expect(() => readDocument('a: 1', { file: 'x', limits })).toThrow(
        expect.objectContaining({ code: 'text.invalid-limit' }),
      );
    },
  );
});

function issuesOf(result: ReadDocumentResult) {
  return result.ok ? [] : result.issues;
}

function documentOf(source: string | Uint8Array, file = 'house.yaml'): TextDocument {
  const result = readDocument(source, { file });
  if (!result.ok) throw new Error(result.issues.map((issue) => issue.code).join());
  return result.document;
}
