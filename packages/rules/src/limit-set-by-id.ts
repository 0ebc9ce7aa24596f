import type { LimitSet } from './limit-set.js';
import { limitSets } from './limit-sets.js';

/**
 * One of the limit sets that come with the library.
 *
 * @param id - the set's id, exactly
 * @returns the set, or nothing where there is none of that id
 *
 * @example
 * limitSetById('germany-4-pa')?.limits[0]?.limitPa; // => -4
 */
export function limitSetById(id: string): LimitSet | undefined {
  return limitSets.find((set) => set.id === id);
}
