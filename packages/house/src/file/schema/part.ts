import { suggest } from '@evendraft/text';
import * as z from 'zod';
import { asZodIssue } from './leaf.js';
import { shapeOf, shapeWords } from './shape-of.js';

/** What a part of the house file is, for editors. */
export interface PartDescription {
  readonly description: string;
  /** Something that may be typed here, for the message when it is no map at all. */
  readonly example: string;
}

/**
 * Schema of a map with known keys, strict: an unknown key is an issue at that key, with the near one suggested.
 *
 * @param shape - schema of each key
 * @param description - what the part is
 * @returns the schema
 */
export function part<Shape extends z.ZodRawShape>(
  shape: Shape,
  description: PartDescription,
): z.ZodObject<Shape, z.core.$strict> {
  const made = new StrictPart({ type: 'object', shape, catchall: z.never() });
  return made.meta({
    description: description.description,
    accepted: [description.example],
  }) as unknown as z.ZodObject<Shape, z.core.$strict>;
}

/** The compiler wants the type of a constructor that is initialised from spelt out. */
const objectOfZod: z.core.$constructor<z.ZodObject> = z.ZodObject;

/** Zod's strict object with our issues in the place of its own. */
const StrictPart: z.core.$constructor<z.ZodObject> = z.core.$constructor(
  'StrictPart',
  (inst, def) => {
    objectOfZod.init(inst, def);
    const { parse } = inst._zod;
    inst._zod.parse = (payload, context) => {
      const input: unknown = payload.value;
      const shape = shapeOf(input);
      if (shape !== 'map') {
        const accepted = (inst.meta()?.['accepted'] ?? []) as string[];
        const problem =
          shape === 'nothing'
            ? {
                code: input === undefined ? 'key.missing' : 'value.empty',
                parameters: { accepted },
              }
            : { code: 'value.wrong-shape', parameters: { found: shapeWords[shape], accepted } };
        payload.issues.push(asZodIssue(problem as Parameters<typeof asZodIssue>[0], input));
        return payload;
      }
      const read = parse(payload, context);
      if (read instanceof Promise) return read;
      read.issues = read.issues.flatMap((issue) =>
        issue.code === 'unrecognized_keys' && (issue.path ?? []).length === 0
          ? issue.keys.map((key) => asZodIssue(unknownKey(key, Object.keys(def.shape)), input))
          : [issue],
      );
      return read;
    };
  },
);

/**
 * The problem of a key that a map does not know.
 *
 * @param key - the key
 * @param known - keys that it knows
 * @returns the problem, at the key
 */
export function unknownKey(
  key: string,
  known: readonly string[],
): Parameters<typeof asZodIssue>[0] {
  const suggestion = suggest(key, known);
  return {
    code: 'key.unknown',
    path: [key],
    parameters: {
      key: key.length > 60 ? `${key.slice(0, 60)}…` : key,
      known,
      ...(suggestion === undefined ? {} : { suggestion }),
    },
  };
}
