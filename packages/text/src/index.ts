/*
 * What a person wrote, as data that knows where it stands.
 *
 * Charter: reads YAML and JSON strictly and within ceilings, gives every key and value its line and
 * column, and defines the issue: something wrong with a text, as a code with parameters, put into
 * words last. It knows nothing of houses or units.
 * The one central type is `TextDocument`, and beside it `Issue`. Read `issue.ts` next, then
 * `text-issues.ts` and `read-document.ts`. Reading itself is the entry `@evendraft/text/read`, so that
 * who only speaks of issues carries no parser.
 */
export { formatIssue } from './format-issue.js';
export type { Issue, IssueParameters, IssuePath, TextPosition } from './issue.js';
export { defineIssues } from './issue-catalogue.js';
export type { IssueCatalogue, IssueCatalogueEntry } from './issue-catalogue.js';
export { suggest } from './suggest.js';
export { printableJson, visibleControls } from './visible-controls.js';
export { TextArgumentError } from './text-argument-error.js';
export type { TextArgumentErrorCode } from './text-argument-error.js';
export { textDigest } from './text-digest.js';
export type { ScalarText, TextDocument } from './text-document.js';
export type { TextIssueCode } from './text-issue-code.js';
export { textIssues } from './text-issues.js';
export { defaultTextLimits } from './text-limits.js';
export type { TextLimits } from './text-limits.js';
export { withPosition } from './with-position.js';
