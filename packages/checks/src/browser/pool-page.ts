/** Runs in a page: a pool of the browser's workers, and this page alone, on the same batch. */
import { batchStatuses, createSolverPool, solveBatch } from '@evendraft/network';
import { createBrowserWorker } from '@evendraft/network/workers/browser';
import { houseBatch } from './house-batch.js';

/** What the page found: how many rows, how many solved, and how many numbers differ. */
export interface PoolReport {
  readonly rows: number;
  readonly solved: number;
  readonly different: number;
  readonly workerStarts: number;
  readonly pressuresPa: readonly number[];
}

Object.assign(globalThis, { poolReport: report });

async function report(): Promise<PoolReport> {
  const { network, batch } = houseBatch();
  let workerStarts = 0;
  const pool = createSolverPool(network, {
    workers: 2,
    createWorker: () => {
      workerStarts++;
      return createBrowserWorker();
    },
  });
  const pooled = await pool.solve(batch, { flows: true });
  pool.close();
  const alone = solveBatch(network, batch, { flows: true });
  const solved = batchStatuses.indexOf('solved');
  const unlike = (a: ArrayLike<number>, b: ArrayLike<number>): number =>
    Array.from(a).filter((value, k) => !Object.is(value, b[k])).length;
  return {
    rows: batch.count,
    solved: pooled.status.filter((status) => status === solved).length,
    different:
      unlike(pooled.status, alone.status) +
      unlike(pooled.iterations, alone.iterations) +
      unlike(pooled.pressuresPa, alone.pressuresPa) +
      unlike(pooled.massFlowKgPerS, alone.massFlowKgPerS),
    workerStarts,
    pressuresPa: Array.from(pooled.pressuresPa),
  };
}
