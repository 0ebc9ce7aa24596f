import * as z from 'zod';
import { signOffSchema } from './sign-off-schema.js';

/**
 * The JSON Schema (draft 7) of a sign-off file, for completion in an editor.
 *
 * @returns plain JSON
 */
export function signOffJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...schema } = z.toJSONSchema(signOffSchema, { target: 'draft-7', io: 'input' });
  return {
    $schema,
    title: 'Evendraft sign-off',
    description: 'The block to sign of a report. Everything but the version may be left out.',
    ...(JSON.parse(JSON.stringify(schema)) as Readonly<Record<string, unknown>>),
  };
}
