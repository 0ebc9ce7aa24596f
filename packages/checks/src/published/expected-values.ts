import * as z from 'zod';

const tolerance = z
  .strictObject({
    /** Allowed difference in the unit of the value. */
    absolute: z.number().positive().exactOptional(),
    /** Allowed difference as a share of the value [-]. */
    relative: z.number().positive().exactOptional(),
    /** Why not less. */
    because: z.string().min(10),
  })
  .refine(({ absolute, relative }) => (absolute === undefined) !== (relative === undefined), {
    error: 'state either absolute or relative',
  });

const leaf = z.strictObject({
  value: z.number(),
  /** Name of one of the file's tolerances. */
  within: z.string(),
});

/** Expected numbers as a tree of names, and the tolerances that they refer to. */
export const expectedSchema = z.strictObject({
  tolerances: z.record(z.string(), tolerance),
  values: z.json(),
});

/** What a case expects. */
export type Expected = z.infer<typeof expectedSchema>;

/** One expected number and where it stands in the tree. */
export interface ExpectedValue {
  readonly path: readonly string[];
  readonly value: number;
  /** Name of its tolerance. */
  readonly within: string;
  /** Allowed difference in the unit of the value. */
  readonly allowed: number;
}

/**
 * Lists the expected numbers of a case.
 *
 * @param expected - what a case expects
 * @returns every number with its path and the difference that is allowed
 * @throws Error when a branch holds no number, or a number names a tolerance that is not stated
 */
export function expectedValues(expected: Expected): readonly ExpectedValue[] {
  return valuesBelow(expected.values, []).map(({ path, value, within }) => {
    const stated = expected.tolerances[within];
    if (stated === undefined) throw new Error(`${path.join('.')}: no tolerance "${within}"`);
    const allowed = stated.absolute ?? (stated.relative ?? 0) * Math.abs(value);
    return { path, value, within, allowed };
  });
}

function valuesBelow(
  tree: unknown,
  path: readonly string[],
): readonly Omit<ExpectedValue, 'allowed'>[] {
  const found = leaf.safeParse(tree);
  if (found.success) return [{ path, ...found.data }];
  const branches = z.record(z.string(), z.unknown()).safeParse(tree);
  const entries = branches.success ? Object.entries(branches.data) : [];
  if (entries.length === 0) throw new Error(`${path.join('.')}: neither a value nor a branch`);
  return entries.flatMap(([name, below]) => valuesBelow(below, [...path, name]));
}
