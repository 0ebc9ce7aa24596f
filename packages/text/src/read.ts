/*
 * Reading a text: YAML or JSON to a document that knows where every key and value stands.
 *
 * Kept apart from `@evendraft/text`, so that who only speaks of issues carries no parser.
 */
export { readDocument } from './read-document.js';
export type { ReadDocumentOptions, ReadDocumentResult } from './read-document.js';
