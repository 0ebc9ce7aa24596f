import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from './assessment.js';
import { plainText } from './internal/plain-text.js';
import type { ReportExtras } from './report-extras.js';
import { cellText, columnHeader, type ReportTable } from './tables/report-table.js';
import { reportTables } from './tables/report-tables.js';

/** One table as a file. */
export interface CsvFile {
  /** Fixed by this package: small letters, hyphens and `.csv`. */
  readonly name: string;
  /** RFC 4180: commas, CRLF, quotes where needed, a head in the first row. */
  readonly text: string;
}

/** How the tables are written. */
export interface CsvOptions {
  /** Units of the reader: inch-pound or SI. Pressures are in pascals in both. */
  readonly system: UnitSystem;
  /** Further results to write beside the assessment. */
  readonly extras?: ReportExtras;
}

/**
 * Every table of the report as CSV; tables without rows are left out.
 *
 * A text that a spreadsheet would take for a formula gets an apostrophe before it, so that no name
 * from a house file is ever calculated. Numbers are plain, with a point and a hyphen for minus.
 *
 * Source of the form: RFC 4180 (2005), section 2 (from memory). The apostrophe is common practice, no
 * source.
 *
 * @param assessment - what was found
 * @param options - units and further results
 * @returns files, their names unique
 */
export function renderCsv(assessment: Assessment, options: CsvOptions): readonly CsvFile[] {
  const { system, extras = {} } = options;
  return reportTables(assessment, { system, extras })
    .filter(({ rows }) => rows.length > 0)
    .map((table) => ({ name: `${table.id}.csv`, text: csvText(table, system) }));
}

function csvText({ columns, rows }: ReportTable, system: UnitSystem): string {
  const lines = [
    columns.map((column) => columnHeader(column, system)),
    ...rows.map((row) =>
      columns.map((column, index) => {
        const cell = row[index];
        const text = cellText(cell, column, system);
        return typeof cell === 'string' ? defused(text) : text;
      }),
    ),
  ];
  return lines.map((cells) => `${cells.map(quoted).join(',')}\r\n`).join('');
}

/** Spreadsheets look for a formula behind blanks as well, and some take the full-width signs. */
function defused(text: string): string {
  const plain = plainText(text);
  return /^[\s\u00a0]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(plain) ? `'${plain}` : plain;
}

function quoted(text: string): string {
  return /[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
