/*
 * Reading a text: YAML or JSON to a document that knows where every key and value stands, and tables of
 * comma-separated values.
 *
 * Kept apart from `@evendraft/text`, so that who only speaks of issues carries no parser.
 */
export { csvTextLimits, readCsv } from './read-csv.js';
export type { CsvCell, CsvTable, ReadCsvOptions, ReadCsvResult } from './read-csv.js';
export { readDocument } from './read-document.js';
export type { ReadDocumentOptions, ReadDocumentResult } from './read-document.js';
