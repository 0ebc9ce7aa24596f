import type { StateBalance, WorstPressure } from '@evendraft/studies';
import type { MissingFact } from '../choose-limit.js';
import type { JudgedStudy } from '../judged-study.js';

/**
 * What a reader must know about the study before a verdict means anything.
 *
 * @param worstCase - the study
 * @param worst - the situation that was judged
 * @returns sentences; none where all was solved, unique and bounded
 */
export function studyNotes(worstCase: JudgedStudy, worst: WorstPressure): readonly string[] {
  const unsolved = worstCase.unsolved.length;
  const all = unsolved + worstCase.situations.length;
  const balance = worstCase.situations.find(
    (situation) =>
      situation.label === worst.label &&
      situation.weather === worst.weather &&
      situation.airtightness === worst.airtightness,
  );
  return [
    ...(unsolved === 0
      ? []
      : [
          `Incomplete: ${unsolved} of ${all} situations could not be solved, and the worst may be among them.`,
        ]),
    ...(balance?.proof.unique === false
      ? [
          'The balance in this situation is one of several that are possible: air in a flue or shaft can stand either way, or a fan that stalls can work at more than one flow. That with the lowest pressure is shown.',
        ]
      : []),
    ...(isOneOfSeveral(balance?.baselineColumns)
      ? [
          'With everything off the balance is also one of several: air in a flue or shaft can stand either way. The fall is counted from the balance with the highest pressure, so that it is the largest.',
        ]
      : []),
    ...(worstCase.proof.notEnclosed === 0
      ? []
      : [
          `The error of the pressures could not be bounded in ${worstCase.proof.notEnclosed} of the study’s solves; the band called near does not cover it.`,
        ]),
  ];
}

/** Whether there is more than one balance, or may be. */
function isOneOfSeveral(columns: StateBalance['baselineColumns']): boolean {
  return columns !== undefined && !(columns.stableBalances === 1 && columns.complete);
}

/**
 * What was missing when the limit was chosen.
 *
 * @param missing - facts that the house lacks and that could have chosen another limit
 * @returns one sentence, or none
 */
export function missingNotes(missing: readonly MissingFact[]): readonly string[] {
  return missing.length === 0
    ? []
    : [
        `The house does not state the ${missing.join(' and ')}: of the rows that may apply, the strictest was taken.`,
      ];
}
