/**
 * Sizes to a limit set, cures that are solved again, remedies compared and ranked.
 *
 * Central type: {@link RemedyRow}, one remedy beside others. Read next: `compare-remedies.ts`; how a size is
 * found is in `@evendraft/studies`, `size-remedy.ts`.
 */
export { airStudy } from './air/air-study.js';
export type { AirStudy } from './air/air-study.js';
export { failureRows } from './air/failure-rows.js';
export type { FailureExtreme, FailureRow } from './air/failure-rows.js';
export { judgeAir } from './air/judge-air.js';
export { compareRemedies } from './compare-remedies.js';
export type { CompareOptions } from './compare-options.js';
export type { RemedyComparison } from './compare-remedies.js';
export { cureFindings } from './cure-findings.js';
export type {
  CuredFinding,
  CuredHouse,
  CureOptions,
  DraftAfterCure,
  MakeUpCurves,
  MakeUpSize,
  SolvedCure,
} from './cure-findings.js';
export { howFar } from './how-far.js';
export type { FlowAnswer, HowFar } from './how-far.js';
export { largestExhaust } from './largest-exhaust.js';
export { offeredRemedies } from './offered-remedies.js';
export type { OfferOptions, OfferedRemedy } from './offered-remedies.js';
export { rankRemedies, usualRankRule } from './rank-rule.js';
export type { RankCriterion, RankRule } from './rank-rule.js';
export { codeReadings, upkeepOf } from './remedy-facts.js';
export type { CodeReading, RemedyForCode } from './remedy-facts.js';
export type { RemedyRow, RemedyYear } from './remedy-row.js';
export { targetsAgainstPushing, targetsOfLimitSet } from './targets-of-limit-set.js';
export type { LimitTargets } from './targets-of-limit-set.js';
