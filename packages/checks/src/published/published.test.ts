import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { expectedSchema, expectedValues } from './expected-values.js';
import { foldersIn, publishedFolder, readJson } from './published-cases.js';

const families = foldersIn(publishedFolder);
const cases = families.flatMap((family) =>
  foldersIn(join(publishedFolder, family)).map((name) => ({ family, name })),
);

test.each(families)('the family %s has cases and a test that runs them', (family) => {
  expect(foldersIn(join(publishedFolder, family)).length).toBeGreaterThan(0);
  const runner = fileURLToPath(new URL(`${family}.test.ts`, import.meta.url));
  expect(existsSync(runner)).toBe(true);
  expect(readFileSync(runner, 'utf8')).toContain(`publishedCases('${family}'`);
});

describe.each(cases)('$family/$name', ({ family, name }) => {
  const folder = join(publishedFolder, family, name);

  test('has its three files and no other', () => {
    expect(readdirSync(folder).sort()).toEqual(['README.md', 'expected.json', 'input.json']);
  });

  test('says where it comes from, how it was read, its status and why this tolerance', () => {
    const text = readFileSync(join(folder, 'README.md'), 'utf8');
    expect(text).toMatch(/^# \S/);
    for (const word of ['Source', 'Read', 'Status', 'Tolerance']) {
      expect(text).toMatch(new RegExp(`^- ${word}: \\S`, 'm'));
    }
    expect(text).toMatch(/^- Status: .*\b(found|memory|derived)\b/m);
  });

  test('expects numbers, each within a stated tolerance, and uses every tolerance', () => {
    const expected = expectedSchema.parse(readJson(join(folder, 'expected.json')));
    const values = expectedValues(expected);
    expect(values.length).toBeGreaterThan(0);
    const used = new Set(values.map(({ within }) => within));
    expect(Object.keys(expected.tolerances).sort()).toEqual([...used].sort());
  });
});
