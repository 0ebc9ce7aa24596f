/** A zone or link was asked for by an id that the network does not have. */
export class UnknownIdError extends Error {
  readonly code = 'UnknownId';
  override readonly name = 'UnknownIdError';

  constructor(readonly id: string) {
    super(`the network has no item "${id}"`);
  }
}
