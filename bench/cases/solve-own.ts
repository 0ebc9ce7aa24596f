import type { BuiltNetwork } from '@evendraft/network';
import { createBatchResult, solveBatch } from '@evendraft/network';

/** One network solved again and again from nothing. */
export interface ColdSolve {
  /** Solves it as many times as said when it was made. */
  (): void;
  /** The pressures found last, in the order of the description [Pa]. */
  readonly pressuresPa: () => Float64Array;
}

/**
 * Cold solves through the public batch interface: every row is the same scenario and starts from
 * nothing.
 *
 * @param network - a built network
 * @param count - how many solves a call does
 * @returns a function that solves it that often
 */
export function coldSolve(network: BuiltNetwork, count: number): ColdSolve {
  const into = createBatchResult(network, count, false);
  const batch = { count };
  const options = { into };
  const solve = (): void => {
    solveBatch(network, batch, options);
    if (into.status[0] !== 1) throw new Error('a benchmark network was not solved');
  };
  return Object.assign(solve, {
    pressuresPa: () => into.pressuresPa.slice(0, network.description.zones.length),
  });
}
