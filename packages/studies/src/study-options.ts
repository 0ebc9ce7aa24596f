import type { House } from '@evendraft/house';
import type { SituationPool } from './workers/situation-pool.js';

/** How a long study is watched and stopped. */
export interface StudyOptions {
  /** Stops the study. */
  readonly signal?: AbortSignal;
  /** What a stopped study does: rejects with the signal's reason, or keeps what is done; it rejects when absent. */
  readonly whenStopped?: WhenStopped;
  readonly onProgress?: (done: number, of: number) => void;
}

/** Whether a stopped study gives nothing or what it has. */
export type WhenStopped = 'reject' | 'keep';

/** How far a study came that was stopped and keeps what it has. */
export interface Stopped {
  readonly done: number;
  readonly of: number;
}

/** How a study is watched that may use workers. */
export interface PooledOptions extends StudyOptions {
  /**
   * Makes workers for a house where the work is long; everything is solved in this thread when absent, with the same
   * result. The study closes them.
   */
  readonly createPool?: (house: House) => SituationPool;
}

/** How the worst case is looked for. */
export interface WorstCaseOptions extends PooledOptions {
  /** How many situations the result lists; extremes are over all of them. 2,000 when absent. */
  readonly keep?: number;
  /**
   * Most situations that are solved one by one; a house with more is covered by the ordering of its devices.
   * 5,000 when absent.
   */
  readonly listUpTo?: number;
}
