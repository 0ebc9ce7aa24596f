import type { AirResults, CureResults, DraftResults, UnfinishedPart } from '@evendraft/report';
import type { Stopped, UncertaintyStudy, WorstCaseStudy } from '@evendraft/studies';

/** What the parts of a stopped assessment came to. */
export interface StoppedWork {
  readonly worstCase: WorstCaseStudy;
  /** False where causes were asked for and not worked out. */
  readonly attributed: boolean;
  /** Draws that were asked for, and what came of them; absent where none were. */
  readonly draws?: { readonly asked: number; readonly study: UncertaintyStudy | undefined };
  readonly draft: Unfinished<DraftResults | undefined>;
  readonly cures: Unfinished<CureResults>;
  readonly air: Unfinished<AirResults | undefined>;
}

/** A result, and how far its work came where it was stopped. */
export interface Unfinished<Result> {
  readonly result: Result;
  /** Present where it was stopped; `of` is absent where it had not begun. */
  readonly stopped?: Pick<UnfinishedPart, 'done' | 'of'>;
}

/**
 * What a stopped assessment did not finish, and what is therefore not shown.
 *
 * @param work - what each part came to
 * @returns parts in the order of the work; none where all was finished
 */
export function unfinishedParts({
  worstCase,
  attributed,
  draws,
  draft,
  cures,
  air,
}: StoppedWork): readonly UnfinishedPart[] {
  const parts: UnfinishedPart[] = [];
  const add = (part: UnfinishedPart): void => void parts.push(part);
  if (worstCase.stopped !== undefined) {
    add({
      work: 'situations',
      ...worstCase.stopped,
      notProved:
        'That the worst situation is among those that were solved is not shown. Each pressure shown is reached; another situation may be deeper, and no appliance is shown to be within its limit.',
    });
  }
  if (!attributed) {
    add({
      work: 'orders of switching on',
      done: 0,
      notProved: 'What each device adds was not worked out.',
    });
  }
  const drawn: Stopped | undefined =
    draws === undefined
      ? undefined
      : draws.study === undefined
        ? { done: 0, of: draws.asked }
        : draws.study.stopped;
  if (drawn !== undefined) {
    add({
      work: 'draws',
      ...drawn,
      notProved:
        drawn.done === 0
          ? 'How sure the numbers are was not worked out.'
          : 'Spreads and probabilities are of fewer draws than were asked for, and their intervals are wider.',
    });
  }
  if (draft.stopped !== undefined) {
    add({
      work: 'flue states',
      ...draft.stopped,
      notProved: 'Flues that were not finished are not shown to draw.',
    });
  }
  if (cures.stopped !== undefined) {
    add({
      work: 'cures',
      ...cures.stopped,
      notProved: 'Cures that are not listed were not solved; a better one may be among them.',
    });
  }
  if (air.stopped !== undefined) {
    add({
      work: 'questions of the air',
      ...air.stopped,
      notProved: 'How far the house may go and what fails were not worked out.',
    });
  }
  return parts;
}
