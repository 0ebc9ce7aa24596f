import type { Issue, IssueParameters, IssuePath } from '@evendraft/text';
import type * as z from 'zod';
import type { FileProblem } from '../file/schema/file-problem.js';
import type { Assumption } from '../house.js';
import type { HouseIssueCode } from '../house-issues.js';

/** What is collected while a house file is read: everything wrong with it, and everything assumed. */
export interface Reading {
  readonly issues: Issue[];
  readonly assumptions: Assumption[];
}

/** Where a value stands: the path in the file. */
export interface Place {
  readonly path: IssuePath;
}

/**
 * An empty collection.
 *
 * @returns no issues, no assumptions
 */
export function startReading(): Reading {
  return { issues: [], assumptions: [] };
}

/**
 * Reports an error.
 *
 * @param reading - where it is collected
 * @param path - where it is
 * @param problem - its code and parameters
 */
export function report(reading: Reading, path: IssuePath, problem: FileProblem): void {
  const { code, parameters } = problem;
  const at = [...path, ...(problem.path ?? [])];
  reading.issues.push({ code, severity: 'error', path: at, parameters });
}

/**
 * Reports something unusual that does not stop the work.
 *
 * @param reading - where it is collected
 * @param path - where it is
 * @param problem - its code and parameters
 */
export function warn(reading: Reading, path: IssuePath, problem: FileProblem): void {
  const { code, parameters } = problem;
  reading.issues.push({ code, severity: 'warning', path, parameters });
}

/**
 * The value that the user gave, or the assumed one, which is then listed.
 *
 * @param reading - where assumptions are collected
 * @param given - what the user gave, if anything
 * @param assumption - what is assumed otherwise; its value is a number with its dimension
 * @returns the value [SI unit of its dimension]
 */
export function givenOr(
  reading: Reading,
  given: number | undefined,
  assumption: Assumption & { readonly value: { readonly si: number } },
): number {
  if (given !== undefined) return given;
  reading.assumptions.push(assumption);
  return assumption.value.si;
}

/**
 * Reads one value with its schema.
 *
 * @param reading - where issues are collected
 * @param schema - schema of the value
 * @param at - the value as it stands in the file, and where
 * @returns what was read; `undefined` if it was wrong, which is then reported
 */
export function readValue<Value>(
  reading: Reading,
  schema: z.ZodType<Value>,
  at: Place & { readonly raw: unknown },
): Value | undefined {
  const result = schema.safeParse(at.raw);
  if (result.success) return result.data;
  for (const issue of result.error.issues) {
    const path = [...at.path, ...issue.path.map((step) => (typeof step === 'symbol' ? '' : step))];
    reading.issues.push({ ...asProblem(issue), severity: 'error', path });
  }
  return undefined;
}

/** Every schema here reports with a code of its own; what zod itself would find is told as a wrong shape. */
function asProblem(issue: z.core.$ZodIssue): {
  readonly code: HouseIssueCode;
  readonly parameters: IssueParameters;
} {
  const carried = issue.code === 'custom' ? (issue.params as FileProblem | undefined) : undefined;
  if (carried?.code !== undefined) {
    return { code: carried.code, parameters: carried.parameters };
  }
  return { code: 'value.wrong-shape', parameters: { found: issue.code, accepted: [] } };
}

/**
 * A path as an origin: `exhaust.hood`.
 *
 * @param path - keys from the root
 * @returns the keys joined by dots
 */
export function originOf(path: IssuePath): string {
  return path.join('.');
}
