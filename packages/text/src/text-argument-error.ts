/** What a program may do wrong with this package; what a text has wrong is an `Issue`, never this. */
export type TextArgumentErrorCode = 'text.duplicate-code' | 'text.invalid-limit';

/** A programmer's mistake in calling this package. */
export class TextArgumentError extends Error {
  override readonly name = 'TextArgumentError';
  readonly code: TextArgumentErrorCode;

  constructor(code: TextArgumentErrorCode, message: string) {
    super(message);
    this.code = code;
  }
}
