import * as z from 'zod';
import { assessmentSchema } from './assessment-schema.js';
import { describeSchema } from './internal/describe-schema.js';
import { comparisonSchema, sizingSchema } from './remedy-schemas.js';

/**
 * The JSON Schema (draft 7) of an assessment, as published in `schema/assessment.schema.json`.
 *
 * @returns plain JSON
 */
export function assessmentJsonSchema(): Readonly<Record<string, unknown>> {
  return published(assessmentSchema, {
    title: 'Evendraft assessment',
    description: 'What one run says about one house. SI units; zone minus outdoors in pascals.',
  });
}

/**
 * The JSON Schema (draft 7) of a sizing, as published in `schema/sizing.schema.json`.
 *
 * @returns plain JSON
 */
export function sizingJsonSchema(): Readonly<Record<string, unknown>> {
  return published(sizingSchema, {
    title: 'Evendraft sizing',
    description: 'The size of one remedy. SI units; zone minus outdoors in pascals.',
  });
}

/**
 * The JSON Schema (draft 7) of a comparison of remedies, as published in `schema/comparison.schema.json`.
 *
 * @returns plain JSON
 */
export function comparisonJsonSchema(): Readonly<Record<string, unknown>> {
  return published(comparisonSchema, {
    title: 'Evendraft comparison',
    description: 'Remedies side by side. SI units; zone minus outdoors in pascals.',
  });
}

/** How a reader knows what a version promises; it stands in every schema. */
const rule =
  'A reader checks schema and schemaVersion before the rest. The version rises when a property goes, when its ' +
  'meaning, its unit or what it may hold changes, and when something is added without which the rest would be ' +
  'misread. What only adds a property does not raise it: a reader passes over what it does not know. This schema ' +
  'names every property of the library version that it comes with, and allows no other.';

function published(
  schema: z.ZodType,
  words: { readonly title: string; readonly description: string },
): Readonly<Record<string, unknown>> {
  const { $schema, ...made } = z.toJSONSchema(schema, { target: 'draft-7', io: 'output' });
  return { $schema, ...words, $comment: rule, ...describeSchema(plainJson(made)) };
}

/** Without the functions that zod keeps beside the JSON for its own use. */
function plainJson(schema: object): Readonly<Record<string, unknown>> {
  return JSON.parse(JSON.stringify(schema)) as Readonly<Record<string, unknown>>;
}
