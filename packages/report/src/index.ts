/*
 * Studies and findings as a page with drawings, terminal text, Markdown, CSV and JSON. Formats, never computes.
 *
 * Central type: {@link Assessment}. Read next: `assessment.ts`, then `render-html.ts`.
 */
export { answerSentences } from './answer-sentences.js';
export type { AnswerOptions } from './answer-sentences.js';
export { assessmentSchema } from './assessment-schema.js';
export { comparisonSchema, sizingSchema } from './remedy-schemas.js';
export {
  assessmentJsonSchema,
  comparisonJsonSchema,
  sizingJsonSchema,
} from './result-json-schemas.js';
export type { Assessment, Attribution, HouseSummary } from './assessment.js';
export type { AirResults, SolvedAir } from './air-results.js';
export type { CureResults } from './cure-results.js';
export type {
  ApplianceDraft,
  DraftResults,
  DraftSituation,
  SolvedDraft,
  SpilledAir,
  WorstDraft,
} from './draft-results.js';
export type { Incomplete, UnfinishedPart, UnfinishedWork } from './incomplete.js';
export type { JudgedSet, ProgrammeTestResult } from './judged-set.js';
export { spillsSomewhere } from './spills-somewhere.js';
export { renderComparison } from './render-comparison.js';
export { renderSizing } from './render-sizing.js';
export type { Comparison, Sizing } from './remedy-results.js';
export { drawDeviceShares } from './drawings/device-shares.js';
export type { DeviceSharesDrawingData } from './drawings/device-shares.js';
export type { DrawingOptions } from './drawings/drawing-options.js';
export { drawExceedance } from './drawings/exceedance.js';
export type { ExceedanceDrawingData } from './drawings/exceedance.js';
export { drawExhaustCurve } from './drawings/exhaust-curve.js';
export type { ExhaustCurveDrawingData } from './drawings/exhaust-curve.js';
export { drawFanAndSystem } from './drawings/fan-and-system.js';
export type { FanAndSystemDrawingData, FlowPressurePoint } from './drawings/fan-and-system.js';
export { drawFlueDraft } from './drawings/flue-draft.js';
export type { DraftPoint, FlueDraftDrawingData } from './drawings/flue-draft.js';
export { drawHouseSection } from './drawings/house-section.js';
export type {
  HouseSectionDrawingData,
  SectionFlow,
  SectionState,
  SectionZone,
} from './drawings/house-section-data.js';
export { drawMakeUpOptions } from './drawings/make-up-options.js';
export type { MakeUpOptionsDrawingData } from './drawings/make-up-options.js';
export { drawPressureLadder } from './drawings/pressure-ladder.js';
export type { PressureLadderDrawingData } from './drawings/pressure-ladder.js';
export { drawStateStrip } from './drawings/state-strip.js';
export type { StateStripDrawingData } from './drawings/state-strip.js';
export { drawWindRose } from './drawings/wind-rose.js';
export type { WindRoseDrawingData } from './drawings/wind-rose.js';
export {
  codeScreensFromFindings,
  exceedanceFromStudy,
  sharesFromStudy,
} from './extras-from-studies.js';
export { makeUpWords } from './internal/size-words.js';
export { notesFromAssessment } from './notes-from-assessment.js';
export { readSignOff } from './read-sign-off.js';
export type { ReadSignOffResult } from './read-sign-off.js';
export { renderCsv } from './render-csv.js';
export type { CsvFile, CsvOptions } from './render-csv.js';
export { renderHtml } from './render-html.js';
export type { HtmlOptions } from './render-html.js';
export { renderJson } from './render-json.js';
export { renderMarkdown } from './render-markdown.js';
export type { MarkdownOptions } from './render-markdown.js';
export { renderTerminal } from './render-terminal.js';
export type { TerminalOptions } from './render-terminal.js';
export type { CodeScreenRow, LeakRow, ReportExtras, ReportNote } from './report-extras.js';
export { ReportError } from './report-error.js';
export type { ReportErrorCode } from './report-error.js';
export { signOffIssues } from './sign-off-issues.js';
export type { SignOffIssueCode } from './sign-off-issues.js';
export { signOffJsonSchema } from './sign-off-json-schema.js';
export { signOffSchema } from './sign-off-schema.js';
export type { SignOff, SignOffPerson } from './sign-off.js';
