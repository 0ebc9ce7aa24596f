/** A study was asked something that makes no sense: the fault of the calling program. */
export class StudyArgumentError extends Error {
  /** The same for every such error. */
  readonly code = 'StudyArgument';
  override readonly name = 'StudyArgumentError';
  /** Which argument it is. */
  readonly argument: string;

  constructor(argument: string, found: unknown, allowed: string) {
    super(`${argument} is ${String(found)}; allowed is ${allowed}`);
    this.argument = argument;
  }
}
