import * as z from 'zod';
import { limitSetSchema } from './limit-set-schema.js';

/**
 * The shape of a limit-set file as JSON Schema (draft 7), for completion in editors.
 *
 * The same text is published with the package as `limit-set.schema.json`.
 *
 * @returns the schema, plain JSON
 */
export function limitSetJsonSchema(): Readonly<Record<string, unknown>> {
  return {
    ...z.toJSONSchema(limitSetSchema, { target: 'draft-7', io: 'input' }),
    title: 'Evendraft limit set',
  };
}
