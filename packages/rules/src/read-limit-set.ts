import type { Issue } from '@evendraft/text';
import { limitSetIssue, schemaIssues } from './internal/schema-issues.js';
import type { LimitSet } from './limit-set.js';
import { limitSetSchema } from './limit-set-schema.js';

/** A limit set, or everything that is wrong with what was to be one. */
export type ReadLimitSetResult =
  | { readonly ok: true; readonly limitSet: LimitSet }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * A user's own limit set from a plain value, such as a parsed YAML or JSON file.
 *
 * Checked like the sets that come with the library; the words of the issues are in `limitSetIssues`.
 *
 * @param value - anything
 * @returns the set, or all its issues with their paths
 *
 * @example
 * readLimitSet({ evendraftLimits: 1 }).ok; // => false
 */
export function readLimitSet(value: unknown): ReadLimitSetResult {
  const parsed = limitSetSchema.safeParse(value, { reportInput: true });
  const issues = [
    ...(parsed.error?.issues.flatMap(schemaIssues) ?? []),
    ...duplicateIds(value, 'limits'),
    ...duplicateIds(value, 'exclusions'),
  ];
  return parsed.success && issues.length === 0
    ? { ok: true, limitSet: parsed.data }
    : { ok: false, issues };
}

/** Looked for in the raw value, so that it is found even where other things are wrong. */
function duplicateIds(value: unknown, list: 'limits' | 'exclusions'): readonly Issue[] {
  const rows = (value as Readonly<Record<string, unknown>> | null | undefined)?.[list];
  if (!Array.isArray(rows)) return [];
  const seen = new Set<string>();
  return rows.flatMap((row: { readonly id?: unknown } | null | undefined, index) => {
    const id = row?.id;
    if (typeof id !== 'string') return [];
    if (seen.has(id))
      return [limitSetIssue('limits.duplicate-id', [list, index, 'id'], { found: id })];
    seen.add(id);
    return [];
  });
}
