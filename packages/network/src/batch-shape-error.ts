/** An array of a batch has not the length that its rows need. */
export class BatchShapeError extends Error {
  readonly code = 'BatchShape';
  override readonly name = 'BatchShapeError';
}
