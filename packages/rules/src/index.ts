/**
 * Published limits as data with document, edition and status, and the step that turns a study into findings.
 *
 * Central type: {@link Finding}. Read next: `finding.ts`, then `judge.ts`.
 */
export type { Finding, FindingSituation, LimitedQuantity, Verdict } from './finding.js';
