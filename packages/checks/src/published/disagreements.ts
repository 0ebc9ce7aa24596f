import type { ExpectedValue } from './expected-values.js';

/** Computed numbers as a tree of names, like the expected ones; it may hold more than is expected. */
export interface ComputedTree {
  readonly [name: string]: number | ComputedTree | undefined;
}

/**
 * Says what is wrong with a case.
 *
 * @param computed - what a runner computed
 * @param expected - what the case expects
 * @returns one sentence for each number that is missing or too far from what is expected
 */
export function disagreements(
  computed: ComputedTree,
  expected: readonly ExpectedValue[],
): readonly string[] {
  return expected.flatMap(({ path, value, within, allowed }) => {
    const got = numberAt(computed, path);
    // A number that is missing or NaN is not near anything.
    if (got !== undefined && Math.abs(got - value) <= allowed) return [];
    return [`${path.join(', ')}: ${String(got)}, expected ${value} within ${allowed} (${within})`];
  });
}

function numberAt(tree: ComputedTree, path: readonly string[]): number | undefined {
  let place: number | ComputedTree | undefined = tree;
  for (const name of path) {
    place = typeof place === 'object' && Object.hasOwn(place, name) ? place[name] : undefined;
  }
  return typeof place === 'number' ? place : undefined;
}
