import type { ExpectedValue } from './expected-values.js';

/** Computed numbers as a tree of names, like the expected ones; more than what is expected is no harm. */
export interface ComputedTree {
  readonly [name: string]: number | ComputedTree | undefined;
}

/** How far a computed number is from the expected one. */
export interface Deviation extends ExpectedValue {
  /** The computed number, or `undefined` when the runner did not compute it. */
  readonly computed: number | undefined;
  readonly within: string;
}

/**
 * Compares every expected number with what was computed.
 *
 * @param computed - what a runner computed
 * @param expected - what the case expects
 * @returns one deviation for each expected number, those that were not computed too
 */
export function deviations(
  computed: ComputedTree,
  expected: readonly ExpectedValue[],
): readonly Deviation[] {
  return expected.map((value) => {
    let place: number | ComputedTree | undefined = computed;
    for (const name of value.path) {
      place = typeof place === 'object' && Object.hasOwn(place, name) ? place[name] : undefined;
    }
    return { ...value, computed: typeof place === 'number' ? place : undefined };
  });
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
  return deviations(computed, expected).flatMap(({ path, value, within, allowed, computed: got }) =>
    // Written so that a NaN disagrees.
    got !== undefined && Math.abs(got - value) <= allowed
      ? []
      : [`${path.join(', ')}: ${String(got)}, expected ${value} within ${allowed} (${within})`],
  );
}
