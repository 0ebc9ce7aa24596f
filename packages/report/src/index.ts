/*
 * Studies and findings as terminal text, Markdown and JSON. Formats, never computes.
 *
 * Central type: {@link Assessment}. Read next: `assessment.ts`, then `render-terminal.ts`.
 */
export { answerSentences } from './answer-sentences.js';
export type { AnswerOptions } from './answer-sentences.js';
export { assessmentJsonSchema } from './assessment-json-schema.js';
export { assessmentSchema } from './assessment-schema.js';
export type { Assessment, HouseSummary } from './assessment.js';
export { renderJson } from './render-json.js';
export { renderMarkdown } from './render-markdown.js';
export type { MarkdownOptions } from './render-markdown.js';
export { renderTerminal } from './render-terminal.js';
export type { TerminalOptions } from './render-terminal.js';
export { ReportError } from './report-error.js';
export type { ReportErrorCode } from './report-error.js';
