import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { formatIssue } from '@evendraft/text';
import { readDocument } from '@evendraft/text/read';
import { describe, expect, it } from 'vitest';
import { houseIssues } from './house-issues.js';
import { parseHouse } from './parse-house.js';

const seed = 20240611;

function everything(file = 'everything.yaml'): Record<string, unknown> {
  const source = readFileSync(new URL(`../fixtures/good/${file}`, import.meta.url));
  const read = readDocument(source, { file });
  if (!read.ok) throw new Error('the fixture cannot be read');
  return read.document.value as Record<string, unknown>;
}

/** Every issue must have words; formatting them must not fail either. */
function expectAnAnswer(value: unknown): void {
  const result = parseHouse(value);
  for (const issue of result.ok ? result.warnings : result.issues) {
    expect(houseIssues.has(issue.code)).toBe(true);
    expect(formatIssue(issue, houseIssues)).not.toMatch(/undefined|\[object/);
  }
  if (!result.ok) expect(result.issues.some(({ severity }) => severity === 'error')).toBe(true);
}

/** Things that a person, or a program that writes house files, may put anywhere. */
const anything = fc.oneof(
  fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true, withMap: true }),
  fc.constantFrom<unknown>(
    '',
    ' ',
    '0 cfm',
    '-5 Pa',
    '1e30 m',
    '1e-30 m2',
    '1e29 cfm at 1e-29 Pa',
    '100 %',
    'main',
    'hood',
    'roof',
    '12 in2 at 4 Pa',
    '1 to 2 to 3 ACH50',
    'NaN',
    NaN,
    Infinity,
    -0,
    [],
    {},
    [[]],
    null,
    undefined,
  ),
);

interface Spot {
  readonly holder: Record<string, unknown>;
  readonly key: string;
}

/** Every place in the data that holds a value. */
function spots(value: unknown): readonly Spot[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...spots(holder[key])]);
}

/** Good files that have every key between them. */
const good = ['everything.yaml', 'ducts-and-dampers.yaml'];

describe('parseHouse', () => {
  it('answers to any value with a house or with issues, and never throws', () => {
    fc.assert(fc.property(anything, expectAnAnswer), { seed, numRuns: 1000 });
  });

  it('answers to any map with the keys of a house file', () => {
    const keys = Object.keys(everything());
    const house = fc.dictionary(fc.constantFrom(...keys), anything).map((map) => ({
      ...map,
      evendraft: 1,
    }));
    fc.assert(fc.property(house, expectAnAnswer), { seed, numRuns: 300 });
  });

  it.each(good)('answers to %s in which some values were replaced', (file) => {
    const count = spots(everything(file)).length;
    const changes = fc.array(fc.tuple(fc.nat(count - 1), anything), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(changes, (list) => {
        const house = everything(file);
        for (const [index, value] of list) {
          const all = spots(house);
          const spot = all[index % all.length];
          if (spot) spot.holder[spot.key] = value;
        }
        expectAnAnswer(house);
      }),
      { seed, numRuns: 100 },
    );
  });

  it.each(good)('answers to %s in which keys were renamed or removed', (file) => {
    const count = spots(everything(file)).length;
    const changes = fc.array(
      fc.tuple(fc.nat(count - 1), fc.option(fc.string(), { nil: undefined })),
      {
        minLength: 1,
        maxLength: 3,
      },
    );
    fc.assert(
      fc.property(changes, (list) => {
        const house = everything(file);
        for (const [index, name] of list) {
          const all = spots(house);
          const spot = all[index % all.length];
          if (!spot) continue;
          const value = spot.holder[spot.key];
          // eslint-disable-next-line @typescript-eslint/no-dynamic-delete -- the point of this test
          delete spot.holder[spot.key];
          if (name !== undefined) spot.holder[name] = value;
        }
        expectAnAnswer(house);
      }),
      { seed, numRuns: 100 },
    );
  });

  it('gives plain data that JSON keeps as they are', () => {
    const result = parseHouse(everything());
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    expect(JSON.parse(JSON.stringify(result.house))).toEqual(result.house);
  });
});
