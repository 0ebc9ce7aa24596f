import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import {
  createSituationPool,
  type SituationPool,
  type SituationReply,
  type SituationWorker,
} from '@evendraft/studies';
import type { House } from 'evendraft';

/**
 * Workers for the situations of one house, one a core.
 *
 * @param house - the house
 * @returns the pool; who uses it closes it
 */
export function situationWorkers(house: House): SituationPool {
  return createSituationPool(house, {
    createWorker: situationThread,
    workers: availableParallelism(),
  });
}

/**
 * Starts one thread that solves situations. It runs the built worker, also when called from source.
 *
 * @returns the worker
 */
export function situationThread(): SituationWorker {
  const built = import.meta.url.endsWith('.ts')
    ? '../dist/workers/situation-worker.js'
    : './workers/situation-worker.js';
  // Without the conditions of this process, under which the worker would look for sources.
  const worker = new Worker(new URL(built, import.meta.url), { execArgv: [] });
  return {
    postMessage: (message) => {
      worker.postMessage(message);
    },
    onMessage: (listener) => {
      worker.on('message', (reply: SituationReply) => {
        listener(reply);
      });
    },
    onError: (listener) => {
      worker.on('error', listener);
    },
    terminate: () => void worker.terminate(),
  };
}
