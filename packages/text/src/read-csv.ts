import { decodeText } from './internal/decode-text.js';
import { lineIndex } from './internal/line-index.js';
import { issuesOf, type Problem } from './internal/problem-list.js';
import { scanCsv, type ScannedCell } from './internal/scan-csv.js';
import type { Issue, TextPosition } from './issue.js';
import { defaultTextLimits, type TextLimits } from './text-limits.js';

/** One cell with its place. */
export interface CsvCell {
  readonly text: string;
  readonly position: TextPosition;
}

/** A table of a text file: a head, and rows of as many cells. */
export interface CsvTable {
  readonly header: readonly CsvCell[];
  readonly rows: readonly (readonly CsvCell[])[];
}

/** How a table is read. */
export interface ReadCsvOptions {
  /** The file's name as the user gave it; it stands in every issue. */
  readonly file: string;
  /** Ceilings other than `csvTextLimits`; a cell counts as a value. */
  readonly limits?: Partial<TextLimits>;
}

/** A table, or at least one error. */
export type ReadCsvResult =
  | { readonly ok: true; readonly table: CsvTable }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Ceilings for a table: that of a year of hours stays far below each. */
export const csvTextLimits: TextLimits = {
  ...defaultTextLimits,
  maxBytes: 16 * 1024 * 1024,
  maxNodes: 500_000,
};

/**
 * Reads a table of comma-separated values that knows where each cell stands.
 *
 * Strict: a quote stands only around a whole cell and is doubled inside it, and every row has as many cells as
 * the head. Lines may end in CRLF or LF; blank lines are passed over; space around a cell without quotes is
 * not part of it.
 *
 * Source of the form: RFC 4180 (2005), section 2 (from memory), but for LF alone, blank lines and space.
 *
 * @param source - the text, or the bytes of a UTF-8 file
 * @param options - the file's name, and ceilings where the usual ones do not fit
 * @returns the table, or the issues (codes in `textIssues`); never throws on any text
 *
 * @example
 * const result = readCsv('hour,temperature [C]\n1,-4.5\n', { file: 'weather.csv' });
 * result.ok && result.table.rows[0]?.[1]?.position; // => { line: 2, column: 3 }
 */
export function readCsv(source: string | Uint8Array, options: ReadCsvOptions): ReadCsvResult {
  const { file } = options;
  const limits = { ...csvTextLimits, ...options.limits };
  const { text, problem } = decodeText(source, limits);
  const positionOf = lineIndex(text);
  const context = { file, positionOf };
  if (problem !== undefined) return { ok: false, issues: issuesOf([problem], context) };
  const scanned = scanCsv(text, limits);
  const [head, ...body] = scanned.rows;
  const problems: Problem[] = [
    ...scanned.problems,
    ...(head === undefined
      ? [{ code: 'text.empty' as const, offset: 0 }]
      : [...repeatedColumns(head), ...unevenRows(head, body)]),
  ];
  if (problems.length > 0 || head === undefined) {
    return { ok: false, issues: issuesOf(problems, context) };
  }
  const placed = (cells: readonly ScannedCell[]): readonly CsvCell[] =>
    cells.map((cell) => ({ text: cell.text, position: positionOf(cell.offset) }));
  return { ok: true, table: { header: placed(head), rows: body.map(placed) } };
}

function repeatedColumns(head: readonly ScannedCell[]): readonly Problem[] {
  return head.flatMap(({ text, offset }, index): readonly Problem[] => {
    const first = head.findIndex((cell) => cell.text === text);
    return first === index || text === ''
      ? []
      : [{ code: 'text.csv-column', offset, parameters: { column: text } }];
  });
}

function unevenRows(
  head: readonly ScannedCell[],
  body: readonly (readonly ScannedCell[])[],
): readonly Problem[] {
  return body.flatMap((row): readonly Problem[] =>
    row.length === head.length
      ? []
      : [
          {
            code: 'text.csv-cells',
            offset: row[0]?.offset ?? 0,
            parameters: { found: row.length, expected: head.length },
          },
        ],
  );
}
