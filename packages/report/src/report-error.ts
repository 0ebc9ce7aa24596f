/** What a program may do wrong with this package. */
export type ReportErrorCode =
  'report.not-finite' | 'report.not-plain-data' | 'report.invalid-width' | 'report.invalid-count';

/** A programmer's mistake: an assessment that is not plain data, or an impossible option. */
export class ReportError extends Error {
  override readonly name = 'ReportError';
  readonly code: ReportErrorCode;

  constructor(code: ReportErrorCode, message: string) {
    super(message);
    this.code = code;
  }
}
