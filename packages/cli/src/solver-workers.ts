import { availableParallelism } from 'node:os';
import { createSolverPool, type BuiltNetwork, type SolverPool } from '@evendraft/network';
import { createNodeWorker } from '@evendraft/network/workers/node';

/**
 * Workers for one network, one a core.
 *
 * @param network - the network that they solve
 * @returns the pool; who uses it closes it
 */
export function solverWorkers(network: BuiltNetwork): SolverPool {
  return createSolverPool(network, {
    createWorker: createNodeWorker,
    workers: availableParallelism(),
  });
}
