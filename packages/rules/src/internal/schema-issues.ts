import { suggest, type Issue, type IssueParameters, type IssuePath } from '@evendraft/text';
import type * as z from 'zod';
import { limitSetJsonSchema } from '../limit-set-json-schema.js';
import type { LimitSetIssueCode } from '../limit-set-issues.js';

/**
 * The project's issues for what the schema says of a limit set, each at its own key.
 *
 * @param problem - one problem as the schema reports it, its input included
 * @returns one issue, or one for each unknown key
 */
export function schemaIssues(problem: z.core.$ZodIssue): readonly Issue[] {
  const path = problem.path.map((step) => (typeof step === 'number' ? step : String(step)));
  const at = (code: LimitSetIssueCode, parameters: IssueParameters): readonly Issue[] => [
    limitSetIssue(code, path, parameters),
  ];
  const { input } = problem;
  const found = shown(input);
  switch (problem.code) {
    case 'unrecognized_keys': {
      const allowed = keysAt(path);
      return problem.keys.map((key) =>
        limitSetIssue('limits.unknown-key', [...path, key], {
          found: key,
          allowed,
          ...near(key, allowed),
        }),
      );
    }
    case 'invalid_type':
      return isMissing(input, path)
        ? at('limits.missing', { expected: typeWords(problem.expected) })
        : at('limits.wrong-type', { found, expected: typeWords(problem.expected) });
    case 'invalid_value': {
      const allowed = problem.values.map(String);
      if (isMissing(input, path)) return at('limits.missing', { expected: allowed });
      if (path[0] === 'evendraftLimits') return at('limits.version', { found });
      const typed = typeof input === 'string' ? near(input, allowed) : {};
      return at('limits.not-allowed', { found, allowed, ...typed });
    }
    case 'too_big':
      return Number(problem.maximum) === 0
        ? at('limits.sign', { found })
        : at('limits.too-large', { found, highest: Number(problem.maximum) });
    case 'too_small':
      return problem.origin === 'number'
        ? at('limits.out-of-range', { found, lowest: Number(problem.minimum) })
        : at('limits.empty', { found: problem.origin === 'array' ? 'the list' : 'the text' });
    case 'invalid_format':
      return at(path.at(-1) === 'edition' ? 'limits.edition-form' : 'limits.id-form', { found });
    case 'custom': {
      const { code, parameters } = problem.params as {
        readonly code: LimitSetIssueCode;
        readonly parameters: IssueParameters;
      };
      return at(code, parameters);
    }
    default:
      // The schema has no unions, keys of records or multiples, so nothing else can come.
      return at('limits.wrong-type', { found, expected: problem.message });
  }
}

/**
 * An issue of a limit set.
 *
 * @param code - one of the catalogue's codes
 * @param path - keys and list indexes from the root
 * @param parameters - what the message is made from
 * @returns the issue, always an error
 */
export function limitSetIssue(
  code: LimitSetIssueCode,
  path: IssuePath,
  parameters: IssueParameters,
): Issue {
  return { code, severity: 'error', path, parameters };
}

/**
 * The near miss as an optional parameter.
 *
 * @param found - what was typed
 * @param allowed - what would have been accepted
 * @returns an object with `suggestion`, or an empty one
 */
export function near(found: string, allowed: readonly string[]): { readonly suggestion?: string } {
  const suggestion = suggest(found, allowed);
  return suggestion === undefined ? {} : { suggestion };
}

function isMissing(input: unknown, path: IssuePath): boolean {
  return input === undefined && path.length > 0;
}

function typeWords(expected: string): string {
  switch (expected) {
    case 'object':
      return 'keys and values';
    case 'array':
      return 'a list';
    case 'boolean':
      return 'true or false';
    case 'string':
      return 'a text';
    default:
      return `a ${expected}`;
  }
}

/** What stands there, short enough for a message. */
function shown(input: unknown): string {
  if (typeof input === 'string') {
    return JSON.stringify(input.length > 60 ? `${input.slice(0, 59)}…` : input);
  }
  if (typeof input === 'number' || typeof input === 'boolean') return String(input);
  if (Array.isArray(input)) return 'a list';
  return input === undefined || input === null ? 'nothing' : 'keys and values';
}

interface SchemaNode {
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly items?: SchemaNode;
}

/** The keys that the schema knows at a path. */
function keysAt(path: IssuePath): readonly string[] {
  let node: SchemaNode | undefined = limitSetJsonSchema();
  for (const step of path) {
    node = typeof step === 'number' ? node?.items : node?.properties?.[step];
  }
  return Object.keys(node?.properties ?? {});
}
