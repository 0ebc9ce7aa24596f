import type { Issue, IssueParameters, IssuePath, TextPosition } from '../issue.js';
import { textIssues } from '../text-issues.js';
import type { TextIssueCode } from '../text-issue-code.js';

/** Something wrong at an offset of the text. */
export interface Problem {
  readonly code: TextIssueCode;
  readonly offset: number;
  readonly path?: IssuePath;
  readonly parameters?: IssueParameters;
}

/** Issues listed for one text; a person mends the first few, and a hostile text could have a million. */
const maxIssues = 50;

/** The problems as issues in the order of the text; beyond fifty, one issue says how many more. */
export function issuesOf(
  problems: readonly Problem[],
  { file, positionOf }: { file: string; positionOf: (offset: number) => TextPosition },
): Issue[] {
  const sorted = problems.toSorted((a, b) => a.offset - b.offset).filter(isFirstOfItsKind);
  const shown = sorted.slice(0, maxIssues);
  const left = sorted.length - shown.length;
  const next = sorted[maxIssues];
  if (left > 0 && next) {
    shown.push({ code: 'text.more-issues', offset: next.offset, parameters: { count: left } });
  }
  return shown.map(({ code, offset, path = [], parameters = {} }) => ({
    code,
    severity: textIssues.get(code)?.severity ?? 'error',
    path,
    parameters,
    file,
    position: positionOf(offset),
  }));
}

/** The reader may report one place twice; the second time says nothing new. */
function isFirstOfItsKind(problem: Problem, index: number, sorted: readonly Problem[]): boolean {
  const before = sorted[index - 1];
  return before === undefined || before.offset !== problem.offset || before.code !== problem.code;
}
