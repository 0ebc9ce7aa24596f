import type { Issue } from '@evendraft/text';
import { near } from './internal/schema-issues.js';
import { limitSets } from './limit-sets.js';

/**
 * The issue to report where a user named a limit set that does not exist.
 *
 * @param id - what was typed
 * @returns an issue with the ids that exist and the one that was probably meant
 *
 * @example
 * unknownLimitSet('germany-4pa').parameters['suggestion']; // => 'germany-4-pa'
 */
export function unknownLimitSet(id: string): Issue {
  const allowed = limitSets.map((set) => set.id);
  return {
    code: 'limits.unknown-set',
    severity: 'error',
    path: [],
    parameters: { found: id, allowed, ...near(id, allowed) },
  };
}
