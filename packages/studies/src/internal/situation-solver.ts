import type { CompiledHouse, House } from '@evendraft/house';
import type { SituationPool } from '../workers/situation-pool.js';
import type { Asked, AskedKind, SituationAnswers } from '../workers/situation-request.js';
import { restAtTimes } from './rest-at-times.js';
import { situationAnswers } from './situation-answers.js';

/** Answers what is asked of the situations of a house, in this thread or in workers. */
export interface SituationSolver {
  readonly ask: <Kind extends AskedKind>(request: Asked<Kind>) => Promise<SituationAnswers[Kind]>;
  /** Ends the workers. */
  readonly close: () => void;
}

/** How a solver comes by its workers. */
export interface SolverOptions {
  /** Makes workers; without it everything is solved in this thread. */
  readonly createPool?: ((house: House) => SituationPool) | undefined;
  /** Work in this thread before workers, who take about a second to start, are worth it; 3 s when absent [ms]. */
  readonly worthMs?: number;
}

/**
 * A solver that begins in this thread, and goes over to workers where the work turns out to be long. Who solves what
 * makes no difference to any answer.
 *
 * @param compiled - the compiled house
 * @param options - how to make workers, and when
 * @returns the solver; close it when done
 */
export function situationSolver(
  compiled: CompiledHouse,
  { createPool, worthMs = 3000 }: SolverOptions = {},
): SituationSolver {
  const answer = situationAnswers(compiled);
  const rest = restAtTimes();
  const start = Date.now();
  let pool: SituationPool | undefined;
  return {
    async ask(request) {
      if (createPool !== undefined && Date.now() - start >= worthMs) {
        pool ??= createPool(compiled.house);
        return pool.ask(request);
      }
      const reply = answer(request);
      await rest();
      return reply;
    },
    close() {
      pool?.close();
    },
  };
}
