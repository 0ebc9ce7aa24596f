import type { House } from '@evendraft/house';
import type {
  Asked,
  AskedKind,
  SituationAnswers,
  SituationReply,
  SituationRequest,
} from './situation-request.js';

/** A worker as the pool sees it, in Node and in a browser alike. */
export interface SituationWorker {
  postMessage(message: SituationRequest): void;
  onMessage(listener: (reply: SituationReply) => void): void;
  onError(listener: (error: unknown) => void): void;
  terminate(): void;
}

/** Workers that hold one house and answer what is asked of its situations. */
export interface SituationPool {
  readonly workers: number;
  /** Answers a request, the same bit for bit whichever worker does; rejects once the pool is closed. */
  ask<Kind extends AskedKind>(request: Asked<Kind>): Promise<SituationAnswers[Kind]>;
  /** Ends the workers. */
  close(): void;
}

interface Task {
  readonly request: SituationRequest;
  readonly resolve: (reply: SituationReply) => void;
  readonly reject: (reason: unknown) => void;
}

/**
 * Starts workers for one house.
 *
 * @param house - the house, which each worker compiles for itself
 * @param options - how to start a worker, and how many
 * @returns the pool; close it when done
 */
export function createSituationPool(
  house: House,
  options: { readonly createWorker: () => SituationWorker; readonly workers: number },
): SituationPool {
  const count = Math.max(1, options.workers);
  const waiting: Task[] = [];
  const running = new Map<SituationWorker, Task>();
  const idle: SituationWorker[] = [];
  const all: SituationWorker[] = [];
  let ended: { readonly reason: unknown } | undefined;

  const end = (reason: unknown): void => {
    ended ??= { reason };
    for (const worker of all) worker.terminate();
    for (const task of [...running.values(), ...waiting.splice(0)]) task.reject(reason);
    running.clear();
  };
  const dispatch = (): void => {
    for (;;) {
      const worker = waiting.length === 0 ? undefined : idle.pop();
      const task = worker === undefined ? undefined : waiting.shift();
      if (worker === undefined || task === undefined) return;
      running.set(worker, task);
      worker.postMessage(task.request);
    }
  };
  for (let index = 0; index < count; index += 1) {
    const worker = options.createWorker();
    all.push(worker);
    idle.push(worker);
    worker.postMessage({ kind: 'house', house });
    worker.onError(end);
    worker.onMessage((reply) => {
      const task = running.get(worker);
      running.delete(worker);
      idle.push(worker);
      task?.resolve(reply);
      dispatch();
    });
  }
  return {
    workers: count,
    ask: <Kind extends AskedKind>(request: Asked<Kind>) =>
      new Promise<SituationAnswers[Kind]>((resolve, reject) => {
        if (ended !== undefined) {
          reject(ended.reason as Error);
          return;
        }
        // A worker answers a request by what its kind is answered by.
        waiting.push({ request, resolve: resolve as Task['resolve'], reject });
        dispatch();
      }),
    close: () => {
      end(new Error('the pool of workers was closed'));
    },
  };
}
