import type { BuiltNetwork } from '../built-network.js';
import { BatchShapeError } from '../batch-shape-error.js';
import { columnsOf, lengthProblem, rowsOf } from '../internal/scenario-rows.js';
import type { ScenarioBatch } from '../scenario.js';
import type { BatchResult } from '../solve-batch.js';
import { createBatchResult } from '../solve-batch.js';
import { defaultMaximumIterations, defaultTolerance } from '../solve-network.js';
import type { CreateWorker, WorkerPort } from './worker-port.js';

/** Workers that hold one network and solve batches on it. */
export interface SolverPool {
  /**
   * Solves a batch. The result is the same, bit for bit, for any number of workers, and the same as
   * `solveBatch` gives.
   */
  solve(batch: ScenarioBatch, options?: PoolSolveOptions): Promise<BatchResult>;
  /** Ends the workers. Batches in progress are rejected. */
  close(): void;
}

/** How to make a pool. */
export interface PoolOptions {
  readonly createWorker: CreateWorker;
  /** One a core is best. */
  readonly workers: number;
}

/** How to solve a batch in a pool. */
export interface PoolSolveOptions {
  readonly tolerance?: number;
  readonly maximumIterations?: number;
  readonly flows?: boolean;
  /** Ends the batch early: the promise is rejected with the signal's reason. */
  readonly signal?: CancelSignal;
  readonly onProgress?: (rowsDone: number, rows: number) => void;
}

/** The part of an AbortSignal that is used. */
export interface CancelSignal {
  readonly aborted: boolean;
  readonly reason?: unknown;
  addEventListener(type: 'abort', listener: () => void): void;
  removeEventListener(type: 'abort', listener: () => void): void;
}

/** Rows that a worker is given at once: some milliseconds of work. */
const chunkRows = 256;

interface Job {
  readonly batch: ScenarioBatch;
  readonly options: PoolSolveOptions;
  readonly result: BatchResult;
  nextRow: number;
  rowsDone: number;
  readonly resolve: (result: BatchResult) => void;
  readonly reject: (reason: unknown) => void;
}

/**
 * Starts workers for one network.
 *
 * @param network - a built network
 * @param options - how to start a worker, and how many
 * @returns a pool; close it when done
 */
export function createSolverPool(
  network: BuiltNetwork,
  { createWorker, workers }: PoolOptions,
): SolverPool {
  const { description, kernel } = network;
  const jobs: Job[] = [];
  const tickets = new Map<number, { job: Job; firstRow: number; port: WorkerPort }>();
  const idle: WorkerPort[] = [];
  const ports: WorkerPort[] = [];
  let lastTicket = 0;
  let closed = false;

  const finish = (job: Job): void => {
    const place = jobs.indexOf(job);
    if (place >= 0) jobs.splice(place, 1);
  };
  const failAll = (reason: unknown): void => {
    for (const job of jobs.splice(0)) job.reject(reason);
  };

  /** Gives every idle worker the next chunk of the first unfinished batch. */
  const dispatch = (): void => {
    for (;;) {
      const job = jobs.find((candidate) => candidate.nextRow < candidate.batch.count);
      const port = job === undefined ? undefined : idle.pop();
      if (job === undefined || port === undefined) return;
      const firstRow = job.nextRow;
      const count = Math.min(chunkRows, job.batch.count - firstRow);
      job.nextRow += count;
      const ticket = ++lastTicket;
      tickets.set(ticket, { job, firstRow, port });
      port.postMessage({
        kind: 'chunk',
        ticket,
        batch: rowsOf(kernel, job.batch, { first: firstRow, count }),
        tolerance: job.options.tolerance ?? defaultTolerance,
        maximumIterations: job.options.maximumIterations ?? defaultMaximumIterations,
        flows: job.options.flows ?? false,
      });
    }
  };

  for (let index = 0; index < Math.max(1, workers); index++) {
    const port = createWorker();
    ports.push(port);
    idle.push(port);
    port.postMessage({ kind: 'network', description });
    port.onError(failAll);
    port.onMessage(({ ticket, result }) => {
      const held = tickets.get(ticket);
      if (held === undefined) return;
      tickets.delete(ticket);
      idle.push(port);
      const { job, firstRow } = held;
      if (jobs.includes(job)) {
        copyChunk(job.result, result, firstRow);
        job.rowsDone += result.status.length;
        job.options.onProgress?.(job.rowsDone, job.batch.count);
        if (job.rowsDone === job.batch.count) {
          finish(job);
          job.resolve(job.result);
        }
      }
      dispatch();
    });
  }

  return {
    solve(batch, options = {}) {
      const problem = lengthProblem(columnsOf(kernel, batch), batch.count);
      if (problem !== undefined) throw new BatchShapeError(problem);
      const { signal } = options;
      return new Promise<BatchResult>((resolve, reject) => {
        if (closed || signal?.aborted === true) {
          reject(closed ? new Error('the pool is closed') : signal?.reason);
          return;
        }
        const result = createBatchResult(network, batch.count, options.flows ?? false);
        if (batch.count === 0) {
          resolve(result);
          return;
        }
        const job: Job = { batch, options, result, nextRow: 0, rowsDone: 0, resolve, reject };
        signal?.addEventListener('abort', () => {
          finish(job);
          reject(signal.reason);
        });
        jobs.push(job);
        dispatch();
      });
    },
    close() {
      closed = true;
      for (const port of ports) port.terminate();
      failAll(new Error('the pool was closed'));
    },
  };
}

function copyChunk(into: BatchResult, chunk: BatchResult, firstRow: number): void {
  const rows = chunk.status.length;
  into.status.set(chunk.status, firstRow);
  into.iterations.set(chunk.iterations, firstRow);
  into.pressuresPa.set(chunk.pressuresPa, (chunk.pressuresPa.length / rows) * firstRow);
  into.massFlowKgPerS.set(chunk.massFlowKgPerS, (chunk.massFlowKgPerS.length / rows) * firstRow);
}
