/**
 * Questions asked of a house with numeric answers: repeated solves, no limits, no formatting.
 *
 * Central type: {@link StateBalance}, one solved situation. Read next: `worst-case-study.ts`.
 */
export type {
  ColumnFindings,
  DeliveredFlow,
  LawRangeWarning,
  MakeUpFlow,
  ProofSummary,
  Situation,
  StateBalance,
  UnsolvedState,
  ZonePressure,
} from './state-balance.js';
export { balanceStudy, baselineStudy } from './balance-study.js';
export type { BalanceQuestion, BaselineResult } from './balance-study.js';
export { resolveColumns } from './resolve-columns.js';
export type { ResolvedSituation } from './resolve-columns.js';
export { worstCaseStudy } from './worst-case-study.js';
export type {
  ApplianceWorst,
  StudyOptions,
  WorstCaseStudy,
  WorstPressure,
  ZoneWorst,
} from './worst-case-study.js';
