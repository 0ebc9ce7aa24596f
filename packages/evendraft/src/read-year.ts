import type { YearOfWeather } from '@evendraft/studies';
import type { Issue } from '@evendraft/text';
import { readCsv, type CsvCell, type CsvTable } from '@evendraft/text/read';
import { parseQuantity } from '@evendraft/units';
import type { YearIssueCode } from './year-issues.js';

/** A year of hours, or everything that is wrong with what was to be one. */
export type ReadYearResult =
  | { readonly ok: true; readonly year: Extract<YearOfWeather, { readonly kind: 'hourly' }> }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Hours of a year and of a leap year. */
const hoursOfYear = [8760, 8784];
/** Issues of rows that are listed; the first ones tell what is wrong with the rest. */
const rowIssuesListed = 20;

/**
 * Reads a year of weather: a table with one row an hour and a column of outdoor temperature.
 *
 * The head of the column states its unit: `temperature [C]` or `temperature [F]`. Other columns are not looked at.
 *
 * @param source - the text, or the bytes of a UTF-8 file
 * @param options - the file's name as the user gave it
 * @returns the temperatures in °C, or the issues (codes in `textIssues` and `yearIssues`)
 */
export function readYear(
  source: string | Uint8Array,
  options: { readonly file: string },
): ReadYearResult {
  const { file } = options;
  const read = readCsv(source, options);
  if (!read.ok) return read;
  const { header, rows } = read.table;
  const column = header.findIndex(({ text }) => /^temperature\b/iu.test(text));
  if (column < 0) {
    const found = header.map(({ text }) => text).join(', ');
    return { ok: false, issues: [issue('year.no-temperature', { file, cell: header[0], found })] };
  }
  const head = header[column]!;
  const unit = /[[(]\s*°?\s*([CFK])\s*[\])]/iu.exec(head.text)?.[1]?.toUpperCase();
  if (unit === undefined) {
    return { ok: false, issues: [issue('year.no-unit', { file, cell: head, found: head.text })] };
  }
  const { temperaturesC, issues } = temperaturesOf(read.table, { column, unit, file });
  if (issues.length === 0 && !hoursOfYear.includes(rows.length)) {
    const found = String(rows.length);
    issues.push(issue('year.hours', { file, cell: head, found }));
  }
  return issues.length > 0
    ? { ok: false, issues: issues.slice(0, rowIssuesListed) }
    : { ok: true, year: { kind: 'hourly', temperaturesC } };
}

function temperaturesOf(
  { rows }: CsvTable,
  of: { readonly column: number; readonly unit: string; readonly file: string },
): { readonly temperaturesC: readonly number[]; readonly issues: Issue[] } {
  const issues: Issue[] = [];
  const temperaturesC = rows.map((row) => {
    const cell = row[of.column]!;
    const result = parseQuantity(`${cell.text} ${of.unit}`, 'temperature');
    const valueC = result.ok ? result.quantity.valueSi : Number.NaN;
    if (!(valueC >= -90 && valueC <= 60)) {
      issues.push(issue('year.temperature', { file: of.file, cell, found: cell.text }));
    }
    return valueC;
  });
  return { temperaturesC, issues };
}

function issue(
  code: YearIssueCode,
  at: { readonly file: string; readonly cell: CsvCell | undefined; readonly found: string },
): Issue {
  return {
    code,
    severity: 'error',
    path: [],
    parameters: { found: at.found.slice(0, 60) },
    file: at.file,
    ...(at.cell === undefined ? {} : { position: at.cell.position }),
  };
}
