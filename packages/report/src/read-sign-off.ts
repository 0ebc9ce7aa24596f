import { suggest, type Issue, type IssueParameters } from '@evendraft/text';
import type * as z from 'zod';
import { signOffSchema } from './sign-off-schema.js';
import type { SignOffIssueCode } from './sign-off-issues.js';
import type { SignOff } from './sign-off.js';

/** A block to sign, or everything that is wrong with what was to be one. */
export type ReadSignOffResult =
  | { readonly ok: true; readonly signOff: SignOff }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * The block to sign from a plain value, such as a parsed YAML or JSON file.
 *
 * The words of the issues are in `signOffIssues`.
 *
 * @param value - anything
 * @returns the block, or all its issues with their paths
 *
 * @example
 * readSignOff({ evendraftSignOff: 1, permit: 117 }).ok; // => true
 */
export function readSignOff(value: unknown): ReadSignOffResult {
  const parsed = signOffSchema.safeParse(value, { reportInput: true });
  return parsed.success
    ? { ok: true, signOff: parsed.data }
    : { ok: false, issues: firstOfEachPlace(parsed.error.issues.flatMap(issuesOf)) };
}

/** What is of the wrong kind is not also too short. */
function firstOfEachPlace(issues: readonly Issue[]): readonly Issue[] {
  const seen = new Set<string>();
  return issues.filter(({ path }) => {
    const place = JSON.stringify(path);
    return !seen.has(place) && seen.add(place);
  });
}

/** Every key that stands somewhere in a sign-off file, for near misses. */
const knownKeys = [
  ...['evendraftSignOff', 'address', 'permit', 'jurisdiction', 'codeEdition', 'basis', 'designer'],
  ...['tester', 'gauge', 'test', 'signatures', 'revisions', 'name', 'company', 'credential'],
  ...['serial', 'calibrated', 'date', 'weather', 'mark', 'change'],
];

function issuesOf(problem: z.core.$ZodIssue): readonly Issue[] {
  const path = problem.path.map((step) => (typeof step === 'number' ? step : String(step)));
  const at = (code: SignOffIssueCode, parameters: IssueParameters): readonly Issue[] => [
    { code, severity: 'error', path, parameters },
  ];
  const found = shown(problem.input);
  const missing = problem.input === undefined && path.length > 0;
  switch (problem.code) {
    case 'unrecognized_keys':
      return problem.keys.map((key) => {
        const suggestion = suggest(key, knownKeys);
        const parameters = suggestion === undefined ? { found: key } : { found: key, suggestion };
        return {
          code: 'sign-off.unknown-key',
          severity: 'error',
          path: [...path, key],
          parameters,
        };
      });
    case 'invalid_value':
      if (path[0] === 'evendraftSignOff') return at('sign-off.version', { found });
      return at('sign-off.not-allowed', { found, allowed: problem.values.map(String) });
    case 'invalid_format':
      return at('sign-off.day', { found });
    case 'too_big':
      return at('sign-off.length', { most: Number(problem.maximum) });
    case 'too_small':
      return at('sign-off.length', { most: problem.origin === 'array' ? 8 : 200 });
    default: {
      const expected = typeWords('expected' in problem ? problem.expected : 'text');
      return missing
        ? at('sign-off.missing', { expected })
        : at('sign-off.wrong-type', { found, expected });
    }
  }
}

function typeWords(expected: string): string {
  if (expected === 'object') return 'keys and values';
  return expected === 'array' ? 'a list' : 'a text';
}

function shown(input: unknown): string {
  if (typeof input === 'string') return JSON.stringify(input.slice(0, 60));
  if (typeof input === 'number' || typeof input === 'boolean') return String(input);
  if (Array.isArray(input)) return 'a list';
  return input === undefined || input === null ? 'nothing' : 'keys and values';
}
