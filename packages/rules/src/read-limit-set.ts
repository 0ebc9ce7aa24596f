import type { Issue, IssueParameters, IssuePath } from '@evendraft/text';
import { near, schemaIssues } from './internal/schema-issues.js';
import type { LimitSetIssueCode } from './limit-set-issues.js';
import { limitSetJsonSchema } from './limit-set-json-schema.js';
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
  const file = { prefix: 'limits' as const, schema: limitSetJsonSchema };
  const parsed = limitSetSchema.safeParse(value, { reportInput: true });
  const issues = [
    ...(parsed.error?.issues.flatMap((problem) => schemaIssues(problem, file)) ?? []),
    ...listsWithIds.flatMap((list) => duplicateIds(value, list)),
    ...unknownConfigurations(value),
  ];
  return parsed.success && issues.length === 0
    ? { ok: true, limitSet: parsed.data }
    : { ok: false, issues };
}

const listsWithIds = [
  'limits',
  'exclusions',
  'testConfigurations',
  'houseLimits',
  'extractLimits',
  'draftLimits',
  'spillageTimes',
  'ambientCo',
  'flueCo',
] as const;

/** Looked for in the raw value, so that it is found even where other things are wrong. */
function duplicateIds(value: unknown, list: (typeof listsWithIds)[number]): readonly Issue[] {
  const seen = new Set<string>();
  return rowsOf(value, list).flatMap((row, index) => {
    const id = row?.['id'];
    if (typeof id !== 'string') return [];
    if (seen.has(id))
      return [limitSetIssue('limits.duplicate-id', [list, index, 'id'], { found: id })];
    seen.add(id);
    return [];
  });
}

/** A house limit may only name a configuration of its own set. */
function unknownConfigurations(value: unknown): readonly Issue[] {
  const known = rowsOf(value, 'testConfigurations').flatMap((row) =>
    typeof row?.['id'] === 'string' ? [row['id']] : [],
  );
  return rowsOf(value, 'houseLimits').flatMap((row, index) => {
    const named = row?.['configuration'];
    if (typeof named !== 'string' || known.includes(named)) return [];
    return [
      limitSetIssue('limits.unknown-configuration', ['houseLimits', index, 'configuration'], {
        found: named,
        allowed: known.length === 0 ? ['none'] : known,
        ...near(named, known),
      }),
    ];
  });
}

type Row = Readonly<Record<string, unknown>> | null | undefined;

function rowsOf(value: unknown, list: string): readonly Row[] {
  const rows = (value as Row)?.[list];
  return Array.isArray(rows) ? (rows as readonly Row[]) : [];
}

function limitSetIssue(
  code: LimitSetIssueCode,
  path: IssuePath,
  parameters: IssueParameters,
): Issue {
  return { code, severity: 'error', path, parameters };
}
