import type { StateBalance } from '@evendraft/studies';

/**
 * One solved situation for each operating state: the one in which the house goes deepest.
 *
 * @param situations - all situations of a study, deepest first
 * @returns one for each state, deepest first
 */
export function deepestPerState(situations: readonly StateBalance[]): readonly StateBalance[] {
  const first = new Map<string, StateBalance>();
  for (const situation of situations) {
    if (!first.has(situation.label)) first.set(situation.label, situation);
  }
  return [...first.values()];
}
