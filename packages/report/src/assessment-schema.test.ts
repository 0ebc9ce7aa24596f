import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type * as z from 'zod';
import { anyAssessment } from '../fixtures/assessment-arbitrary.js';
import { hostile, manyZones, noAppliances, oneZone } from '../fixtures/invented-assessments.js';
import { everyPart } from '../fixtures/invented-results.js';
import { assessmentJsonSchema } from './assessment-json-schema.js';
import { assessmentSchema } from './assessment-schema.js';
import type { Assessment } from './assessment.js';
import type { assessmentObjectSchema } from './internal/assessment-object-schema.js';
import { renderJson } from './render-json.js';

type Mutable<T> = T extends object ? { -readonly [Key in keyof T]: Mutable<T[Key]> } : T;

const published = new URL('../schema/assessment.schema.json', import.meta.url);

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
      { ...oneZone, schemaVersion: 1 },
    ];
    for (const each of refused) expect(assessmentSchema.safeParse(each).success).toBe(false);
  });

  it('has the type of an assessment', () => {
    // Checked by the compiler, not at run time: an optional field that only one of them has shows here.
    expectTypeOf<z.infer<typeof assessmentObjectSchema>>().toEqualTypeOf<Mutable<Assessment>>();
  });
});

describe('assessmentJsonSchema', () => {
  // Written from the schema in code; `vitest --update` writes it anew after a change of version.
  it('is what the package publishes', async () => {
    const text = `${JSON.stringify(assessmentJsonSchema(), null, 2)}\n`;
    await expect(text).toMatchFileSnapshot(fileURLToPath(published));
    expect(JSON.parse(readFileSync(published, 'utf8'))).toEqual(assessmentJsonSchema());
  });

  it('names the unit of every quantity', () => {
    const text = JSON.stringify(assessmentJsonSchema());
    for (const unit of ['Pa', 'm3/s', 'm2', 'm3', 'C', 'm/s', 'deg']) {
      expect(text).toContain(`"unit":"${unit}"`);
    }
  });

  it('says of every property what it is, and of every quantity its unit', () => {
    const undescribed: string[] = [];
    const without: string[] = [];
    const walk = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      for (const [key, value] of Object.entries(node)) {
        if (key !== 'properties') {
          walk(value, path);
          continue;
        }
        for (const [name, property] of Object.entries(value as Record<string, object>)) {
          const { description = '' } = property as { description?: string };
          if (description.length < 5) undescribed.push(`${path}.${name}`);
          const quantity = /(?:Pa|M3PerS|KgPerS|MPerS|M2|M3|AltitudeM|TemperatureC|Ppm|Deg|N)$/u;
          const spread = JSON.stringify(property).includes('percentiles');
          if (quantity.test(name) && !/\[[^\]]+\]\.?$/u.test(description) && !spread) {
            without.push(`${path}.${name}: ${description}`);
          }
          walk(property, `${path}.${name}`);
        }
      }
    };
    walk(assessmentJsonSchema(), '');
    expect(undescribed).toEqual([]);
    expect(without).toEqual([]);
  });

  it('allows no key that it does not name', () => {
    expect(assessmentJsonSchema()['additionalProperties']).toBe(false);
  });
});
