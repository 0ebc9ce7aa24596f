import * as z from 'zod';
import { refuse, type FileProblem, type ValueResult } from './file-problem.js';

/** What a person and an editor need to know about one value of a house file. */
export interface LeafDescription {
  /** What the value means, as an editor shows it. */
  readonly description: string;
  /** What may be typed, the commonest first. */
  readonly examples: readonly (string | number | boolean)[];
  /** What else the JSON Schema says of it; text when absent. */
  readonly jsonSchema?: Readonly<Record<string, unknown>>;
}

/** No value of a house file is longer; what is may not be searched by patterns [characters]. */
const longestText = 200;

/**
 * Schema of one value that is read as a whole: text with a unit, a word, a number.
 *
 * Its issues carry their own code, so that none is ever a bare "invalid input".
 *
 * @param description - what it means and what may be typed
 * @param read - reads what stands there; never called with nothing
 * @returns the schema, whose output is what was read
 */
export function leaf<Value>(
  description: LeafDescription,
  read: (value: unknown) => ValueResult<Value>,
): z.ZodType<Value> {
  const { jsonSchema = { type: 'string' } } = description;
  const accepted = description.examples.map(String);
  return z
    .unknown()
    .transform((value, context): Value => {
      const result =
        value === undefined
          ? refuse('key.missing', { accepted })
          : value === null
            ? refuse('value.empty', { accepted })
            : typeof value === 'string' && value.length > longestText
              ? refuse('value.too-long', { length: value.length, allowed: longestText, accepted })
              : read(value);
      if (result.ok) return result.value;
      for (const problem of result.problems) context.issues.push(asZodIssue(problem, value));
      return z.NEVER;
    })
    .meta({
      ...jsonSchema,
      description: description.description,
      // Zod drops `examples` of a schema that transforms; they are put back when the schema is printed.
      accepted: description.examples,
    });
}

/**
 * A problem as an issue that zod carries to the root, collecting the path on its way.
 *
 * @param problem - the problem
 * @param input - the value that it is about
 * @returns the issue
 */
export function asZodIssue(problem: FileProblem, input: unknown): z.core.$ZodRawIssue {
  return {
    code: 'custom',
    input,
    message: problem.code,
    path: [...(problem.path ?? [])],
    params: { code: problem.code, parameters: problem.parameters },
  };
}
