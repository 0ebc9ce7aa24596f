/**
 * What a tight house does to its own air, as one import: read a house, assess it, render the answer.
 *
 * Central type: {@link Assessment}. Read next: `assess.ts`, which is the whole way of the data in a few lines.
 */
export { assess } from './assess.js';
export type { AssessOptions } from './assess.js';
export { HouseNotCompilable } from './house-not-compilable.js';
export { libraryVersion } from './version.js';

export { houseFileJsonSchema, houseIssues, parseHouse } from '@evendraft/house';
export type { House, HouseResult } from '@evendraft/house';
export { readHouse } from '@evendraft/house/read';
export type { ReadHouseOptions } from '@evendraft/house/read';
export {
  assessmentJsonSchema,
  readSignOff,
  renderCsv,
  renderHtml,
  renderJson,
  renderMarkdown,
  renderTerminal,
  signOffIssues,
  signOffJsonSchema,
} from '@evendraft/report';
export type {
  Assessment,
  CsvFile,
  ReadSignOffResult,
  ReportExtras,
  SignOff,
} from '@evendraft/report';
export {
  defaultLimitSet,
  limitSetById,
  limitSetIssues,
  limitSets,
  readLimitSet,
  unknownLimitSet,
} from '@evendraft/rules';
export type { Finding, LimitSet, ReadLimitSetResult, Verdict } from '@evendraft/rules';
export type { StateBalance, WorstCaseStudy } from '@evendraft/studies';
export { formatIssue } from '@evendraft/text';
export type { Issue } from '@evendraft/text';
