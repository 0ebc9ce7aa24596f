/**
 * Workers in a browser. Import from `@evendraft/network/workers/browser`.
 */
import type { CreateWorker, WorkerPort, WorkerReply } from './worker-port.js';

interface BrowserWorker {
  postMessage(message: unknown): void;
  onmessage: ((event: { readonly data: WorkerReply }) => void) | null;
  onerror: ((event: unknown) => void) | null;
  terminate(): void;
}

/** What the language itself does not promise, and every runtime of modules gives. */
interface Address {
  readonly url: string;
}

declare const URL: new (path: string, base: string) => object;
declare class Worker implements BrowserWorker {
  constructor(url: object, options: { type: 'module' });
  postMessage(message: unknown): void;
  onmessage: ((event: { readonly data: WorkerReply }) => void) | null;
  onerror: ((event: unknown) => void) | null;
  terminate(): void;
}

/**
 * Starts a module worker of the browser. Bundlers recognize the address and pack the worker along.
 *
 * @returns a worker for a pool
 */
export const createBrowserWorker: CreateWorker = () =>
  browserPort(
    new Worker(new URL('./browser-worker.js', (import.meta as unknown as Address).url), {
      type: 'module',
    }),
  );

/**
 * A worker that the page has started itself, for a bundler that wants the call in its own file.
 *
 * @param worker - runs `browser-worker.js`
 * @returns a worker for a pool
 */
export function browserPort(worker: BrowserWorker): WorkerPort {
  return {
    postMessage: (message) => {
      worker.postMessage(message);
    },
    onMessage: (listener) => {
      worker.onmessage = ({ data }) => {
        listener(data);
      };
    },
    onError: (listener) => {
      worker.onerror = listener;
    },
    terminate: () => {
      worker.terminate();
    },
  };
}
