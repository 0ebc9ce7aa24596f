import { describe, expect, expectTypeOf, it } from 'vitest';
import type * as z from 'zod';
import { compared, sized } from '../fixtures/invented-remedies.js';
import type { comparisonObjectSchema, sizingObjectSchema } from './internal/remedy-schema.js';
import { comparisonSchema, sizingSchema } from './remedy-schemas.js';
import type { Comparison, Sizing } from './remedy-results.js';

type Mutable<T> = T extends object ? { -readonly [Key in keyof T]: Mutable<T[Key]> } : T;

describe('sizingSchema', () => {
  it('refuses an unknown key, an unknown kind of remedy and a size that is no number', () => {
    expect(sizingSchema.safeParse(sized).error).toBeUndefined();
    const refused: readonly unknown[] = [
      { ...sized, extra: 1 },
      { ...sized, remedy: { ...sized.remedy, kind: 'prayer' } },
      { ...sized, result: { ...sized.result, size: Number.NaN } },
      { ...sized, schemaVersion: 2 },
    ];
    for (const each of refused) expect(sizingSchema.safeParse(each).success).toBe(false);
  });

  it('has the type of a sizing', () => {
    // Checked by the compiler, not at run time: an optional field that only one of them has shows here.
    expectTypeOf<z.infer<typeof sizingObjectSchema>>().toEqualTypeOf<Mutable<Sizing>>();
  });
});

describe('comparisonSchema', () => {
  it('refuses an unknown key and a version that is not its own', () => {
    expect(comparisonSchema.safeParse(compared).error).toBeUndefined();
    expect(comparisonSchema.safeParse({ ...compared, extra: 1 }).success).toBe(false);
    expect(comparisonSchema.safeParse({ ...compared, schemaVersion: 1 }).success).toBe(false);
  });

  it('has the type of a comparison', () => {
    expectTypeOf<z.infer<typeof comparisonObjectSchema>>().toEqualTypeOf<Mutable<Comparison>>();
  });
});
