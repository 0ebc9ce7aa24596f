import type { Remedy } from '../remedy.js';
import type { TriedSize } from './offered-sizes.js';
import type { RemedyTrial, SizeJudgement } from './remedy-trial.js';
import type { TargetMargin } from './target-margins.js';

/** What is known of a question of size that was stopped; no answer to it; plain JSON. */
export interface UnfinishedSizing {
  readonly question: 'size';
  readonly remedy: string;
  readonly status: 'unfinished';
  /** Without the remedy: of every target over all situations, or of those that a situation was seen to fail. */
  readonly margins: readonly TargetMargin[];
  /** The nearest size that was seen to fail, on the side of smaller ones, or of larger ones for a largest size. */
  readonly fails?: JudgedSize;
  /** The smallest size that was seen to hold, or the largest for a largest size. */
  readonly holds?: JudgedSize;
  /** Sizes that were judged, in rising order. */
  readonly tried: readonly TriedSize[];
  readonly solves: number;
}

/** A size that was judged, and by what. */
export interface JudgedSize extends SizeJudgement {
  readonly size: number;
}

/**
 * What is known where a search for a size was stopped.
 *
 * @param remedy - the remedy
 * @param trial - what was tried of it
 * @returns the sizes between which the answer lies so far
 */
export function unfinishedSizing(remedy: Remedy, trial: RemedyTrial): UnfinishedSizing {
  const tried = trial.tried();
  const order = remedy.wanted === 'smallest' ? tried : [...tried].reverse();
  const found = order.findIndex(({ holds }) => holds);
  const judged = (size: TriedSize | undefined): JudgedSize | undefined =>
    size && { size: size.size, ...trial.judgedBy(size.size) };
  const fails = judged(found < 0 ? order.at(-1) : order[found - 1]);
  const holds = judged(order[found]);
  return {
    question: 'size',
    remedy: remedy.what,
    status: 'unfinished',
    margins: trial.marginsAsItIs(),
    ...(fails === undefined ? {} : { fails }),
    ...(holds === undefined ? {} : { holds }),
    tried,
    solves: trial.solves(),
  };
}
