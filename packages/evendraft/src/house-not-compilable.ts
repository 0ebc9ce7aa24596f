import type { Issue } from '@evendraft/text';

/** Thrown for a house that was put together by hand and does not hold together; a read house never does this. */
export class HouseNotCompilable extends Error {
  readonly code = 'HouseNotCompilable';
  /** What is wrong, with paths in the house file. */
  readonly issues: readonly Issue[];

  constructor(issues: readonly Issue[]) {
    const where = issues.map((issue) => `${issue.path.join('.')} (${issue.code})`).join(', ');
    super(`The house does not compile to a network: ${where}`);
    this.name = 'HouseNotCompilable';
    this.issues = issues;
  }
}
