/**
 * What a tight house does to its own air, as one import: read a house, assess it, render the answer.
 *
 * Central type: {@link Assessment}. Read next: `assess.ts`, which is the whole way of the data in a few lines.
 */
export { assess } from './assess.js';
export type { AssessOptions, AssessWork } from './assess.js';
export { beyondLimits } from './beyond-limits.js';
export type { BeyondLimits } from './beyond-limits.js';
export { compare } from './compare.js';
export type { CompareRequest } from './compare.js';
export type { WhenAir } from './air-of.js';
export type { WhenCures } from './cures-of.js';
export type { WhenDraft } from './draft-of.js';
export { HouseNotCompilable } from './house-not-compilable.js';
export { readYear } from './read-year.js';
export type { ReadYearResult } from './read-year.js';
export { yearIssues } from './year-issues.js';
export type { YearIssueCode } from './year-issues.js';
export { reportExtras } from './report-extras.js';
export { size } from './size.js';
export type { SizeRequest, SizeResult } from './size.js';
export { libraryVersion } from './version.js';
export type { UncertaintyRequest } from './worst-uncertainty.js';

export { houseFileJsonSchema, houseIssues, parseHouse } from '@evendraft/house';
export type { House, HouseResult } from '@evendraft/house';
export { readHouse } from '@evendraft/house/read';
export type { ReadHouseOptions } from '@evendraft/house/read';
export {
  assessmentJsonSchema,
  comparisonJsonSchema,
  readSignOff,
  renderComparison,
  renderCsv,
  renderHtml,
  renderJson,
  renderMarkdown,
  renderSizing,
  renderTerminal,
  signOffIssues,
  signOffJsonSchema,
  sizingJsonSchema,
} from '@evendraft/report';
export type {
  Assessment,
  Comparison,
  CsvFile,
  ReadSignOffResult,
  ReportExtras,
  SignOff,
  Sizing,
} from '@evendraft/report';
export {
  defaultLimitSet,
  limitSetById,
  limitSetIssues,
  limitSets,
  readLimitSet,
  readScreenFacts,
  ruleRegions,
  screenFactsIssues,
  unknownLimitSet,
} from '@evendraft/rules';
export type {
  Finding,
  LimitSet,
  ReadLimitSetResult,
  RuleRegion,
  ScreenFacts,
  Verdict,
} from '@evendraft/rules';
export { usualRankRule } from '@evendraft/remedies';
export type { OfferOptions, RankCriterion, RankRule } from '@evendraft/remedies';
export type {
  DuctRun,
  PressureTarget,
  RemedyKind,
  StateBalance,
  WorstCaseStudy,
  YearOfWeather,
} from '@evendraft/studies';
export { formatIssue } from '@evendraft/text';
export type { Issue } from '@evendraft/text';
