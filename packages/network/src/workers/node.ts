/**
 * Workers in Node. Import from `@evendraft/network/workers/node`.
 */
import type { CreateWorker, WorkerPort, WorkerReply } from './worker-port.js';

// Only this entry speaks of Node; it asks for its modules at run time, so that the package itself has none.
declare const process: { getBuiltinModule(name: string): unknown };
declare const URL: new (path: string, base: string) => object;

/** What the language itself does not promise, and every runtime of modules gives. */
interface Address {
  readonly url: string;
}

interface NodeWorker {
  postMessage(message: unknown): void;
  on(event: 'message', listener: (message: WorkerReply) => void): void;
  on(event: 'error', listener: (error: unknown) => void): void;
  terminate(): Promise<number>;
}

interface WorkerThreads {
  readonly Worker: new (url: object, options: { execArgv: string[] }) => NodeWorker;
}

/**
 * Starts a worker thread of Node. It runs the built worker, also when called from source.
 *
 * @returns a worker for a pool
 */
export const createNodeWorker: CreateWorker = (): WorkerPort => {
  const { Worker } = process.getBuiltinModule('node:worker_threads') as WorkerThreads;
  const here = (import.meta as unknown as Address).url;
  const built = here.endsWith('.ts') ? '../../dist/workers/node-worker.js' : './node-worker.js';
  // Without the conditions of this process, under which the worker would look for sources.
  const worker = new Worker(new URL(built, here), { execArgv: [] });
  return {
    postMessage: (message) => {
      worker.postMessage(message);
    },
    onMessage: (listener) => {
      worker.on('message', listener);
    },
    onError: (listener) => {
      worker.on('error', listener);
    },
    terminate: () => void worker.terminate(),
  };
};
