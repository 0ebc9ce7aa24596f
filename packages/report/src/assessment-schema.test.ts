import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type * as z from 'zod';
import { anyAssessment } from '../fixtures/assessment-arbitrary.js';
import { hostile, manyZones, noAppliances, oneZone } from '../fixtures/invented-assessments.js';
import { everyPart } from '../fixtures/invented-results.js';
import { assessmentSchema } from './assessment-schema.js';
import type { Assessment } from './assessment.js';
import type { assessmentObjectSchema } from './internal/assessment-object-schema.js';
import { renderJson } from './render-json.js';

type Mutable<T> = T extends object ? { -readonly [Key in keyof T]: Mutable<T[Key]> } : T;

describe('assessmentSchema', () => {
  it.each([
    ['one zone', oneZone],
    ['many zones', manyZones],
    ['no appliances', noAppliances],
    ['hostile names', hostile],
    ['every part', everyPart],
  ])('accepts the assessment with %s as it is and as JSON', (_, assessment) => {
    expect(assessmentSchema.parse(assessment)).toEqual(assessment);
    expect(assessmentSchema.parse(JSON.parse(renderJson(assessment)))).toEqual(assessment);
  });

  it('accepts any assessment that the types allow', () => {
    fc.assert(
      fc.property(anyAssessment, (assessment) => {
        expect(assessmentSchema.safeParse(assessment).success).toBe(true);
      }),
      { seed: 2029, numRuns: 100 },
    );
  });

  it('refuses an unknown key, a missing one, an unknown verdict and a number that is none', () => {
    const [first] = oneZone.findings;
    const refused: readonly unknown[] = [
      { ...oneZone, extra: 1 },
      { ...oneZone, cautions: undefined },
      { ...oneZone, house: { ...oneZone.house, colour: 'red' } },
      { ...oneZone, findings: [{ ...first, verdict: 'fine' }] },
      { ...oneZone, house: { ...oneZone.house, volumeM3: Number.NaN } },
      { ...oneZone, schemaVersion: 2 },
    ];
    for (const each of refused) expect(assessmentSchema.safeParse(each).success).toBe(false);
  });

  it('has the type of an assessment', () => {
    // Checked by the compiler, not at run time: an optional field that only one of them has shows here.
    expectTypeOf<z.infer<typeof assessmentObjectSchema>>().toEqualTypeOf<Mutable<Assessment>>();
  });
});
