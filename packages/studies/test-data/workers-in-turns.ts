import type { House } from '@evendraft/house';
import { situationAnswerer } from '../src/workers/answer-situations.js';
import {
  createSituationPool,
  type SituationPool,
  type SituationWorker,
} from '../src/workers/situation-pool.js';
import type { SituationReply } from '../src/workers/situation-request.js';

/**
 * Workers in this thread that answer after a number of turns, which differs from worker to worker, so that answers
 * come out of order.
 *
 * @param workers - how many
 * @returns makes them for a house
 */
export function workersInTurns(workers: number): (house: House) => SituationPool {
  let made = 0;
  return (house) => createSituationPool(house, { workers, createWorker: () => slowWorker(made++) });
}

function slowWorker(index: number): SituationWorker {
  const answer = situationAnswerer();
  let heard: (reply: SituationReply) => void = () => undefined;
  return {
    postMessage(message) {
      const reply = answer(structuredClone(message));
      if (reply !== undefined) {
        setTimeout(() => heard(structuredClone(reply)), (index % 3) * 4);
      }
    },
    onMessage: (listener) => void (heard = listener),
    onError: () => undefined,
    terminate: () => undefined,
  };
}
