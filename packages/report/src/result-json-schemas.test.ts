import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  assessmentJsonSchema,
  comparisonJsonSchema,
  sizingJsonSchema,
} from './result-json-schemas.js';

const schemas = [
  ['assessment', assessmentJsonSchema()],
  ['sizing', sizingJsonSchema()],
  ['comparison', comparisonJsonSchema()],
] as const;

describe.each(schemas)('the JSON Schema of the %s', (name, schema) => {
  // Written from the schema in code; `vitest --update` writes it anew after a change of version.
  it('is what the package publishes', async () => {
    const file = new URL(`../schema/${name}.schema.json`, import.meta.url);
    const text = `${JSON.stringify(schema, null, 2)}\n`;
    await expect(text).toMatchFileSnapshot(fileURLToPath(file));
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(schema);
  });

  it('tells by which rule its version rises', () => {
    expect(schema['$comment']).toContain('The version rises when');
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
    walk(schema, '');
    expect(undescribed).toEqual([]);
    expect(without).toEqual([]);
  });

  it('allows no key that it does not name', () => {
    expect(schema['additionalProperties']).toBe(false);
  });
});

describe('assessmentJsonSchema', () => {
  it('names the unit of every quantity', () => {
    const text = JSON.stringify(assessmentJsonSchema());
    for (const unit of ['Pa', 'm3/s', 'm2', 'm3', 'C', 'm/s', 'deg']) {
      expect(text).toContain(`"unit":"${unit}"`);
    }
  });
});
