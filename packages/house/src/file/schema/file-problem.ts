import type { IssueParameters, IssuePath } from '@evendraft/text';
import type { HouseIssueCode } from '../../house-issues.js';

/** Something wrong with one value of a house file, before it is known where the value stands. */
export interface FileProblem {
  readonly code: HouseIssueCode;
  readonly parameters: IssueParameters;
  /** Keys from the value to the place concerned; the value itself when absent. */
  readonly path?: IssuePath;
}

/** A value read, or everything that is wrong with it. */
export type ValueResult<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly FileProblem[] };

/**
 * A value as the result of reading.
 *
 * @param value - what was read
 * @returns the successful result
 */
export function accept<Value>(value: Value): ValueResult<Value> {
  return { ok: true, value };
}

/**
 * One problem as the result of reading.
 *
 * @param code - code of the issue
 * @param parameters - what its message is made from
 * @returns the failed result
 */
export function refuse(
  code: HouseIssueCode,
  parameters: IssueParameters,
): { readonly ok: false; readonly problems: readonly FileProblem[] } {
  return { ok: false, problems: [{ code, parameters }] };
}
