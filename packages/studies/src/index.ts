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
export type {
  ApplianceWorst,
  WorstCaseStudy,
  WorstPressure,
  ZoneWorst,
} from './worst-case-study.js';
