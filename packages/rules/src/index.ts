/**
 * Published limits as data with document, edition and status, and the step that turns a study into findings.
 *
 * Central type: {@link Finding}. Read next: `finding.ts`, then `judge.ts`; the data is in `limit-sets/`.
 */
export { cautions } from './cautions.js';
export { chooseLimit } from './choose-limit.js';
export type { LimitChoice, MissingFact } from './choose-limit.js';
export type { Finding, FindingSituation, LimitedQuantity, Verdict } from './finding.js';
export { judge } from './judge.js';
export type { JudgeInput } from './judge.js';
export { limitSetIssues } from './limit-set-issues.js';
export type { LimitSetIssueCode } from './limit-set-issues.js';
export { limitSetJsonSchema } from './limit-set-json-schema.js';
export { limitSetSchema } from './limit-set-schema.js';
export { limitSetById } from './limit-set-by-id.js';
export { defaultLimitSet, limitSets } from './limit-sets.js';
export type {
  AppliesTo,
  ChimneyFacts,
  Exclusion,
  Limit,
  LimitedFuel,
  LimitedVent,
  LimitSet,
  VentPartner,
} from './limit-set.js';
export { judgingAssumptions, leastNearBandPa, nearBand } from './near-band.js';
export { readLimitSet } from './read-limit-set.js';
export type { ReadLimitSetResult } from './read-limit-set.js';
export { RulesArgumentError } from './rules-argument-error.js';
export { unknownLimitSet } from './unknown-limit-set.js';
