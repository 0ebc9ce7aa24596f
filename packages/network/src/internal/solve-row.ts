import type { ScenarioBatch } from '../scenario.js';
import { graphVerdict, untiedZones } from './graph-verdict.js';
import type { Kernel } from './kernel.js';
import type { IterationLimits } from './newton.js';
import { iterate } from './newton.js';
import { setScenario } from './set-scenario.js';
import { findStart } from './start.js';

/** How the solve of one row ended. Pressures, flows, steps and the graph's verdict are in the kernel. */
export type RowStatus = 'solved' | 'not-converged' | 'infeasible' | 'not-unique';

/** What is needed to solve a row. */
export interface RowTask {
  readonly batch: ScenarioBatch;
  row: number;
  readonly limits: IterationLimits;
  /** Start from the pressures that are in the kernel. */
  readonly started: boolean;
}

/** Solves one row of a batch whose numbers have been checked, in the kernel; allocates nothing if it solves. */
export function solveRow(kernel: Kernel, { batch, row, limits, started }: RowTask): RowStatus {
  setScenario(kernel, batch, row);
  const { verdict } = graphVerdict(kernel);
  if (verdict === 'infeasible' || verdict === 'not-unique') return verdict;
  if (!started) findStart(kernel);
  iterate(kernel, limits);
  if (!kernel.iteration.converged) return 'not-converged';
  if (verdict === 'open') {
    const zones = untiedZones(kernel);
    if (zones.length > 0) {
      kernel.verdict = { verdict: 'not-unique', zones };
      return 'not-unique';
    }
  }
  return 'solved';
}
