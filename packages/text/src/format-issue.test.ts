import { describe, expect, it } from 'vitest';

import { formatIssue } from './format-issue.js';
import { defineIssues } from './issue-catalogue.js';
import type { Issue } from './issue.js';

const catalogue = defineIssues([
  {
    code: 'unit.missing',
    severity: 'error',
    message: ({ found, accepted }) =>
      `found "${String(found)}", expected a volume flow such as ${String(accepted)}`,
    hint: ({ suggestion }) => `Write ${String(suggestion)}.`,
    remedy: 'Write the unit after the number.',
  },
  { code: 'plain', severity: 'warning', message: () => 'something is odd', remedy: 'Look at it.' },
]);
const issue: Issue = {
  code: 'unit.missing',
  severity: 'error',
  path: ['exhaust', 'hood', 'high'],
  parameters: { found: '900', accepted: ['640 cfm', '95 L/s'], suggestion: '900 cfm' },
  file: 'house.yaml',
  position: { line: 13, column: 8 },
};

describe('formatIssue', () => {
  it('gives place, path, message and hint in one line', () => {
    expect(formatIssue(issue, catalogue)).toBe(
      'house.yaml:13:8: exhaust.hood.high: found "900", expected a volume flow such as ' +
        '640 cfm,95 L/s. Write 900 cfm.',
    );
  });

  it('leaves out what there is not', () => {
    const { code, parameters } = issue;
    const bare: Issue = { code, severity: 'error', path: [], parameters };
    expect(formatIssue(bare, catalogue)).toMatch(/^found "900"/);
    expect(formatIssue({ ...bare, file: 'a.yaml' }, catalogue)).toMatch(/^a\.yaml: found/);
    expect(formatIssue({ ...bare, position: { line: 1, column: 2 } }, catalogue)).toMatch(
      /^1:2: f/,
    );
  });

  it('marks a warning', () => {
    const warning: Issue = {
      ...issue,
      code: 'plain',
      severity: 'warning',
      path: ['a', 2, 'b.c', ''],
    };
    expect(formatIssue(warning, catalogue)).toBe(
      'house.yaml:13:8: warning: a[2]."b.c"."": something is odd.',
    );
  });

  it('prints an unknown code with its parameters rather than losing it', () => {
    expect(formatIssue({ ...issue, code: 'new', parameters: { a: 1 } }, catalogue)).toContain(
      'new {"a":1}.',
    );
    expect(formatIssue({ ...issue, code: 'new', parameters: {} }, catalogue)).toMatch(/: new\.$/);
  });

  it('lets no text steer the terminal', () => {
    const attack: Issue = { ...issue, path: ['\u001b(0'], parameters: { found: 'a\nb\u202e' } };
    expect(formatIssue(attack, catalogue)).toContain('\\u001b(0: found "a\\u000ab\\u202e"');
  });
});

describe('defineIssues', () => {
  it('throws on a code that is defined twice', () => {
    expect(() => defineIssues([...catalogue.values(), ...catalogue.values()])).toThrow(
      expect.objectContaining({ code: 'text.duplicate-code' }),
    );
  });
});
