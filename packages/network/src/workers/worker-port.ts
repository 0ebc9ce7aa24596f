import type { BatchResult } from '../solve-batch.js';
import type { NetworkDescription } from '../network-description.js';
import type { ScenarioBatch } from '../scenario.js';

/** A worker as the pool sees it, in Node and in a browser alike. */
export interface WorkerPort {
  postMessage(message: WorkerRequest): void;
  onMessage(listener: (message: WorkerReply) => void): void;
  onError(listener: (error: unknown) => void): void;
  terminate(): void;
}

/** Starts one worker. */
export type CreateWorker = () => WorkerPort;

/** What a pool asks of a worker. */
export type WorkerRequest =
  | { readonly kind: 'network'; readonly description: NetworkDescription }
  | {
      readonly kind: 'chunk';
      readonly ticket: number;
      readonly batch: ScenarioBatch;
      readonly tolerance: number;
      readonly maximumIterations: number;
      readonly flows: boolean;
    };

/** What a worker answers to a chunk. */
export interface WorkerReply {
  readonly ticket: number;
  readonly result: BatchResult;
}
