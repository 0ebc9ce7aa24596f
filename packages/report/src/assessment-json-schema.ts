import * as z from 'zod';
import { assessmentSchema } from './assessment-schema.js';
import { describeSchema } from './internal/describe-schema.js';

/**
 * The JSON Schema (draft 7) of an assessment, as published in `schema/assessment.schema.json`.
 *
 * @returns plain JSON
 */
export function assessmentJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...schema } = z.toJSONSchema(assessmentSchema, {
    target: 'draft-7',
    io: 'output',
  });
  return {
    $schema,
    title: 'Evendraft assessment',
    description: 'What one run says about one house. SI units; zone minus outdoors in pascals.',
    ...describeSchema(plainJson(schema)),
  };
}

/** Without the functions that zod keeps beside the JSON for its own use. */
function plainJson(schema: object): Readonly<Record<string, unknown>> {
  return JSON.parse(JSON.stringify(schema)) as Readonly<Record<string, unknown>>;
}
