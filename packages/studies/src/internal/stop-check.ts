import type { StudyOptions } from '../study-options.js';

/**
 * Asks between pieces of work whether a study is to stop.
 *
 * @param options - signal, and what a stop gives
 * @returns a function that answers whether to end with what is done, and throws the signal's reason where nothing
 *   is to be kept
 */
export function stopCheck({
  signal,
  whenStopped = 'reject',
}: Pick<StudyOptions, 'signal' | 'whenStopped'>): () => boolean {
  return () => {
    if (whenStopped === 'reject') signal?.throwIfAborted();
    return signal?.aborted === true;
  };
}
