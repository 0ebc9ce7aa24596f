import type { Stopped } from '@evendraft/studies';

/**
 * Why nothing can be within a limit in a study that was stopped.
 *
 * @param stopped - how far the study came
 * @returns a sentence
 */
export function stoppedReason({ done, of }: Stopped): string {
  return `The work was stopped after ${done} of ${of} situations: none of these is near its limit or beyond it, but the others were not solved.`;
}
