import * as z from 'zod';
import type { LeafDescription } from './leaf.js';
import { asZodIssue } from './leaf.js';
import { shapeOf, shapeWords, type Shape } from './shape-of.js';

/** The schema for each shape in which a value may be typed. */
export type Branches = Readonly<Partial<Record<'text' | 'flag' | 'list' | 'map', z.ZodType>>>;

/**
 * Schema of a value that may be typed in several shapes; the shape alone decides which schema reads it.
 *
 * Unlike a union it never tries one after the other, so every issue points at its own key. In the JSON
 * Schema it is an `anyOf`.
 *
 * @param branches - schema by shape; a bare number goes to the text branch, which asks for its unit
 * @param description - what the value means, whatever its shape
 * @returns the schema
 */
export function branch<const Given extends Branches>(
  branches: Given,
  description: Pick<LeafDescription, 'description' | 'examples'>,
): z.ZodType<z.output<NonNullable<Given[keyof Given]>>> {
  const shapes = Object.keys(branches) as (keyof Branches)[];
  const options = shapes.map((shape) => branches[shape] as z.ZodType);
  return new BranchByShape({ type: 'union', options, shapes } as BranchDefinition).meta({
    description: description.description,
    accepted: description.examples,
  }) as unknown as z.ZodType<z.output<NonNullable<Given[keyof Given]>>>;
}

interface BranchDefinition extends z.core.$ZodUnionDef {
  readonly shapes: readonly (keyof Branches)[];
}

/** The compiler wants the type of a constructor that is initialised from spelt out. */
const unionOfZod: z.core.$constructor<z.ZodUnion> = z.ZodUnion;

const BranchByShape: z.core.$constructor<z.ZodUnion, BranchDefinition> = z.core.$constructor(
  'BranchByShape',
  (inst, def) => {
    unionOfZod.init(inst, def);
    inst._zod.parse = (payload, context) => {
      const input: unknown = payload.value;
      const shape = shapeOf(input);
      const wanted: Shape = shape === 'number' ? 'text' : shape;
      const option = def.options[def.shapes.findIndex((known) => known === wanted)];
      if (option) return option._zod.run(payload, context);
      const accepted = ((inst.meta()?.['accepted'] ?? []) as unknown[]).map(String);
      const code =
        shape !== 'nothing'
          ? 'value.wrong-shape'
          : input === undefined
            ? 'key.missing'
            : 'value.empty';
      const found = code === 'value.wrong-shape' ? { found: shapeWords[shape] } : {};
      payload.issues.push(asZodIssue({ code, parameters: { accepted, ...found } }, input));
      return payload;
    };
  },
);
