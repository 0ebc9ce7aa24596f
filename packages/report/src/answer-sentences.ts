import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from './assessment.js';
import { answerParts } from './internal/answer-parts.js';

/** How the answer is told. */
export interface AnswerOptions {
  /** Units of the reader: inch-pound or SI. Pressures are in pascals in both. */
  readonly system: UnitSystem;
}

/**
 * The answer in a few plain sentences, as every report gives it first.
 *
 * Where the work was stopped, first that and what is not shown. How far down the worst zone goes and in which situation; what could not be solved; then each kind
 * of verdict with its appliances; what flues do at worst; then that none of it is a clearance. Plain text that carries names
 * from the house file: escape it for the medium it is put in.
 *
 * @param assessment - what was found
 * @param options - the reader's units
 * @returns at least two sentences, in order
 */
export function answerSentences(assessment: Assessment, options: AnswerOptions): readonly string[] {
  const { incomplete, worst, unsolved, findings, flues, closing } = answerParts(
    assessment,
    options.system,
  );
  return [...incomplete, worst, ...unsolved, ...findings, ...flues, ...closing];
}
