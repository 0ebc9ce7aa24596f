/**
 * Studies and findings as terminal text, Markdown and JSON. Formats, never computes.
 *
 * Central type: {@link Assessment}. Read next: `assessment.ts`, then `render-terminal.ts`.
 */
export type { Assessment, HouseSummary } from './assessment.js';
