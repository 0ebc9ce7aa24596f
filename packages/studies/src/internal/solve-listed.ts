import type { CompiledHouse, House } from '@evendraft/house';
import type { StateBalance, UnsolvedState } from '../state-balance.js';
import type { SituationPool } from '../workers/situation-pool.js';
import type { ListedSituations } from './listed-situations.js';
import { restAtTimes } from './rest-at-times.js';

/** How situations are solved one by one. */
export interface SolveListedOptions {
  readonly createPool: ((house: House) => SituationPool) | undefined;
  readonly onProgress: ((done: number, of: number) => void) | undefined;
  /** Ends the work where it answers true; what is solved by then is kept. */
  readonly stopped: () => boolean;
  /** When workers take over; what `usualPatience` says when absent. */
  readonly patience?: Patience;
}

/** When the rest of the work goes to workers. */
export interface Patience {
  /** Work in this thread first, to see how long a situation takes [ms]. */
  readonly tryMs: number;
  /** Work left for which workers, who take about a second to start, are worth it [ms]. */
  readonly worthMs: number;
}

type Solved = StateBalance | UnsolvedState;

const usualPatience: Patience = { tryMs: 300, worthMs: 3000 };

/** Situations that a worker is given at once. */
const situationsAtOnce = 32;

/**
 * Solves every situation of a house in the order of study. Where the first ones show that the rest is long, the
 * rest goes to workers; what comes out is the same.
 *
 * @param compiled - the compiled house
 * @param situations - its situations
 * @param options - workers, progress, stop
 * @returns one a situation, in the order of study; where it was stopped those that are done
 */
export async function solveListed(
  compiled: CompiledHouse,
  situations: ListedSituations,
  options: SolveListedOptions,
): Promise<readonly Solved[]> {
  const { createPool, onProgress, stopped, patience = usualPatience } = options;
  const { count } = situations;
  const solved: Solved[] = [];
  const rest = restAtTimes();
  const start = Date.now();
  while (solved.length < count && !stopped()) {
    solved.push(situations.solve(solved.length));
    onProgress?.(solved.length, count);
    const spentMs = Date.now() - start;
    if (createPool !== undefined && spentMs >= patience.tryMs) {
      const leftMs = (spentMs / solved.length) * (count - solved.length);
      if (leftMs >= patience.worthMs) {
        return byWorkers(createPool(compiled.house), { solved, count, options });
      }
    }
    await rest();
  }
  return solved;
}

async function byWorkers(
  pool: SituationPool,
  of: {
    readonly solved: readonly Solved[];
    readonly count: number;
    readonly options: SolveListedOptions;
  },
): Promise<readonly Solved[]> {
  const { onProgress, stopped } = of.options;
  const chunks = new Map<number, readonly Solved[]>();
  let next = of.solved.length;
  let done = next;
  const work = async (): Promise<void> => {
    while (next < of.count && !stopped()) {
      const first = next;
      next = Math.min(of.count, first + situationsAtOnce);
      const chunk = await pool.ask({ kind: 'situations', first, end: next });
      chunks.set(first, chunk);
      done += chunk.length;
      onProgress?.(done, of.count);
    }
  };
  try {
    await Promise.all(Array.from({ length: pool.workers }, work));
  } finally {
    pool.close();
  }
  const inOrder = [...chunks].sort(([one], [other]) => one - other);
  return [...of.solved, ...inOrder.flatMap(([, chunk]) => chunk)];
}
