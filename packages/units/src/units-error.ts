/** What a program may do wrong with this package; what a person types wrongly is data, never this. */
export type UnitsErrorCode =
  | 'units.unknown-unit'
  | 'units.different-dimensions'
  | 'units.not-a-number'
  | 'units.invalid-precision';

/** A programmer's mistake: a unit that does not exist, or a value that cannot be printed. */
export class UnitsError extends Error {
  override readonly name = 'UnitsError';
  readonly code: UnitsErrorCode;

  constructor(code: UnitsErrorCode, message: string) {
    super(message);
    this.code = code;
  }
}
