import { nextTurn } from './next-turn.js';

/** Work between two turns, so that a page or a terminal stays alive and a stop is heard at once [ms]. */
const mostMsBetweenRests = 50;

/**
 * Lets other work run where enough time has passed since it last did.
 *
 * @returns to be awaited after each piece of work
 */
export function restAtTimes(): () => Promise<void> {
  let rested = Date.now();
  return async () => {
    if (Date.now() - rested < mostMsBetweenRests) return;
    await nextTurn();
    rested = Date.now();
  };
}
