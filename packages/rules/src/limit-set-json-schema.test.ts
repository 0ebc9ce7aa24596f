import { expect, it } from 'vitest';
import published from '../schema/limit-set.schema.json' with { type: 'json' };
import { limitSetJsonSchema } from './limit-set-json-schema.js';

it('is published with the package as it is', () => {
  expect(published, 'write limitSetJsonSchema() to schema/limit-set.schema.json').toEqual(
    limitSetJsonSchema(),
  );
});

it('is strict and tells the units', () => {
  expect(published.additionalProperties).toBe(false);
  expect(published.properties.limits.items.properties.limitPa).toEqual({
    type: 'number',
    minimum: -100,
    exclusiveMaximum: 0,
    unit: 'Pa',
  });
  expect(published.required).not.toContain('exclusions');
});
