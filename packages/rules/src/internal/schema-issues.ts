import { suggest, type Issue, type IssueParameters, type IssuePath } from '@evendraft/text';
import type * as z from 'zod';

/** The file that is read: what its codes begin with, and its keys as JSON Schema. */
export interface ReadFile {
  readonly prefix: 'limits' | 'facts';
  /** Made only where a key is not known. */
  readonly schema: () => SchemaNode;
}

/** As much of a JSON Schema as tells which keys are known where. */
export interface SchemaNode {
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  /** Present where the keys are names of the user's own. */
  readonly additionalProperties?: SchemaNode | boolean;
  readonly items?: SchemaNode;
}

/**
 * The project's issues for what the schema says of a file, each at its own key.
 *
 * @param problem - one problem as the schema reports it, its input included
 * @param file - the file's prefix and keys
 * @returns one issue, or one for each unknown key
 */
export function schemaIssues(problem: z.core.$ZodIssue, file: ReadFile): readonly Issue[] {
  const path = problem.path.map((step) => (typeof step === 'number' ? step : String(step)));
  const issueAt = (kind: string, where: IssuePath, parameters: IssueParameters): Issue => ({
    code: `${file.prefix}.${kind}`,
    severity: 'error',
    path: where,
    parameters,
  });
  const at = (kind: string, parameters: IssueParameters): readonly Issue[] => [
    issueAt(kind, path, parameters),
  ];
  const { input } = problem;
  const found = shown(input);
  switch (problem.code) {
    case 'unrecognized_keys': {
      const allowed = keysAt(file.schema(), path);
      return problem.keys.map((key) =>
        issueAt('unknown-key', [...path, key], {
          found: key,
          allowed,
          ...near(key, allowed),
        }),
      );
    }
    case 'invalid_type':
      return isMissing(input, path)
        ? at('missing', { expected: typeWords(problem.expected) })
        : at('wrong-type', { found, expected: typeWords(problem.expected) });
    case 'invalid_value': {
      const allowed = problem.values.map(String);
      if (isMissing(input, path)) return at('missing', { expected: allowed });
      if (path[0] === 'evendraftLimits') return at('version', { found });
      const typed = typeof input === 'string' ? near(input, allowed) : {};
      return at('not-allowed', { found, allowed, ...typed });
    }
    case 'too_big':
      return Number(problem.maximum) === 0
        ? at('sign', { found })
        : at('too-large', { found, highest: Number(problem.maximum) });
    case 'too_small':
      return problem.origin === 'number'
        ? at('out-of-range', { found, lowest: Number(problem.minimum) })
        : at('empty', { found: problem.origin === 'array' ? 'the list' : 'the text' });
    case 'invalid_format':
      return at(path.at(-1) === 'edition' ? 'edition-form' : 'id-form', { found });
    case 'custom': {
      const { kind, parameters } = problem.params as {
        readonly kind: string;
        readonly parameters: IssueParameters;
      };
      return at(kind, parameters);
    }
    default:
      // The schema has no unions, keys of records or multiples, so nothing else can come.
      return at('wrong-type', { found, expected: problem.message });
  }
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

/** The keys that the schema knows at a path. */
function keysAt(schema: SchemaNode, path: IssuePath): readonly string[] {
  const node = path.reduce<SchemaNode>(
    (here, step) => (typeof step === 'number' ? here.items : underKey(here, step)) ?? {},
    schema,
  );
  return Object.keys(node.properties ?? {});
}

function underKey(node: SchemaNode, key: string): SchemaNode | undefined {
  const { properties, additionalProperties: named } = node;
  return properties?.[key] ?? (typeof named === 'object' ? named : undefined);
}
