/**
 * Questions asked of a house with numeric answers: repeated solves, no limits, no formatting.
 *
 * Central type: {@link StateBalance}, one solved situation. Read next: `worst-case-study.ts`.
 */
export type {
  DeliveredFlow,
  MakeUpFlow,
  ProofSummary,
  Situation,
  StateBalance,
  UnsolvedState,
  ZonePressure,
} from './state-balance.js';
export { balanceStudy, baselineStudy } from './balance-study.js';
export type { BalanceQuestion, BaselineResult } from './balance-study.js';
export { attributionStudy } from './attribution-study.js';
export type {
  AttributionOptions,
  AttributionStudy,
  DeviceShare,
  LadderStep,
} from './attribution-study.js';
export { pressureRangeStudy } from './pressure-range-study.js';
export type { PressureRangeStudy, ZoneRange } from './pressure-range-study.js';
export type { PressureTarget, TargetQuantity } from './pressure-target.js';
export { questionOf } from './question-of.js';
export { StudyArgumentError } from './study-argument-error.js';
export { uncertainInputIssues, usualUncertainty } from './uncertain-input.js';
export type { UncertainInput, UncertainInputIssue, UncertainInputKind } from './uncertain-input.js';
export type {
  InputImportance,
  Spread,
  TargetProbability,
  UncertaintyStudy,
  ZoneSpread,
} from './uncertain-pressures.js';
export { uncertaintyStudy } from './uncertainty-study.js';
export type { UncertaintyOptions, UncertaintyQuestion } from './uncertainty-study.js';
export { worstCaseStudy } from './worst-case-study.js';
export type {
  ApplianceWorst,
  StudyOptions,
  WorstCaseCoverage,
  WorstCaseStudy,
  WorstPressure,
  ZoneWorst,
} from './worst-case-study.js';
