import { describe, expect, expectTypeOf, it } from 'vitest';
import type * as z from 'zod';
import { fullSignOff } from '../fixtures/invented-extras.js';
import { readSignOff } from './read-sign-off.js';
import { signOffJsonSchema } from './sign-off-json-schema.js';
import { signOffIssues } from './sign-off-issues.js';
import type { signOffSchema } from './sign-off-schema.js';
import type { SignOff } from './sign-off.js';

function codesOf(value: unknown): readonly string[] {
  const result = readSignOff(value);
  return result.ok ? [] : result.issues.map(({ code, path }) => `${code} ${path.join('.')}`);
}

describe('readSignOff', () => {
  it('takes a whole block and one with nothing but its version', () => {
    expect(readSignOff(fullSignOff)).toEqual({ ok: true, signOff: fullSignOff });
    expect(readSignOff({ evendraftSignOff: 1 }).ok).toBe(true);
  });

  it('takes a permit written as a number', () => {
    expect(readSignOff({ evendraftSignOff: 1, permit: 117 })).toEqual({
      ok: true,
      signOff: { evendraftSignOff: 1, permit: '117' },
    });
  });

  it.each<[string, unknown, string]>([
    ['no version', {}, 'sign-off.version evendraftSignOff'],
    ['another version', { evendraftSignOff: 2 }, 'sign-off.version evendraftSignOff'],
    ['an unknown key', { evendraftSignOff: 1, adress: 'x' }, 'sign-off.unknown-key adress'],
    [
      'a word that is none of the two',
      { evendraftSignOff: 1, basis: 'as built' },
      'sign-off.not-allowed basis',
    ],
    [
      'a day that is none',
      { evendraftSignOff: 1, test: { date: '20 March' } },
      'sign-off.day test.date',
    ],
    [
      'a person without a name',
      { evendraftSignOff: 1, tester: {} },
      'sign-off.missing tester.name',
    ],
    ['a list for a text', { evendraftSignOff: 1, address: [] }, 'sign-off.wrong-type address'],
    [
      'a text far too long',
      { evendraftSignOff: 1, address: 'x'.repeat(201) },
      'sign-off.length address',
    ],
    ['no signer', { evendraftSignOff: 1, signatures: [] }, 'sign-off.length signatures'],
    ['something else altogether', 'hello', 'sign-off.wrong-type '],
  ])('names %s', (_, value, expected) => {
    expect(codesOf(value)).toEqual([expected]);
  });

  it('has words and a remedy for every code', () => {
    for (const [code, entry] of signOffIssues) {
      expect(entry.message({ found: '"x"', expected: 'a text', allowed: ['a'], most: 8 })).not.toBe(
        '',
      );
      expect(entry.remedy.endsWith('.'), code).toBe(true);
    }
  });

  it('publishes a schema that names every key and allows no other', () => {
    const schema = signOffJsonSchema();
    expect(Object.keys(schema['properties'] ?? {}).sort()).toEqual(Object.keys(fullSignOff).sort());
    expect([schema['additionalProperties'], schema['required']]).toEqual([
      false,
      ['evendraftSignOff'],
    ]);
  });

  it('has the type of a block to sign', () => {
    expectTypeOf<z.infer<typeof signOffSchema>>().toEqualTypeOf<SignOff>();
  });
});
