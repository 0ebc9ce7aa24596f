import { displayWidth } from './display-width.js';
import { plainText } from './plain-text.js';
import { wrapText } from './wrap-text.js';

/** One column of a table in a terminal. */
export interface TextColumn {
  readonly header: string;
  /** Numbers stand on the right. */
  readonly align?: 'left' | 'right';
  /** A column that may be narrowed to this many columns, its cells then wrap [-]. */
  readonly minimum?: number;
  /** Dresses a finished cell, e.g. in colour; what it adds must take no room. */
  readonly dress?: (padded: string, cell: string) => string;
}

/** A table's content and the room it has. */
export interface TextTableInput {
  readonly columns: readonly TextColumn[];
  readonly rows: readonly (readonly string[])[];
  /** Columns of the line [-]. */
  readonly width: number;
  /** Dresses a line of the header. */
  readonly dressHeader?: (line: string) => string;
}

/** A finished table, row by row, so that something may be put between its rows. */
export interface TextTable {
  readonly header: readonly string[];
  /** The lines of each row. */
  readonly rows: readonly (readonly string[])[];
}

const gap = '  ';

/**
 * Aligned columns with a header, no line wider than asked.
 *
 * @param input - columns, rows and width
 * @returns lines of the header and of each row; a row takes several where a cell wraps
 */
export function textTable(input: TextTableInput): TextTable {
  const { columns, width, dressHeader = same } = input;
  const rows = input.rows.map((row) => columns.map((_, index) => plainText(row[index] ?? '')));
  const headers = columns.map((column) => plainText(column.header));
  const widths = columnWidths({ columns, rows, width });
  return {
    header: layOut({ columns, widths, cells: headers, dressed: false }).map(dressHeader),
    rows: rows.map((cells) => layOut({ columns, widths, cells, dressed: true })),
  };
}

/**
 * Width that a table cannot go below [-].
 *
 * @param columns - the columns
 * @param rows - the rows
 * @returns columns of the line [-]
 */
export function narrowestTable(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
): number {
  const natural = naturalWidths(columns, rows);
  const least = natural.map((width, index) => Math.min(width, columns[index]?.minimum ?? width));
  return sum(least) + gap.length * (columns.length - 1);
}

function naturalWidths(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
): number[] {
  return columns.map((column, index) =>
    Math.max(
      displayWidth(column.header),
      ...rows.map((row) => displayWidth(plainText(row[index] ?? ''))),
    ),
  );
}

function columnWidths(input: {
  readonly columns: readonly TextColumn[];
  readonly rows: readonly (readonly string[])[];
  readonly width: number;
}): readonly number[] {
  const { columns, rows } = input;
  const room = input.width - gap.length * (columns.length - 1);
  const widths = naturalWidths(columns, rows);
  const least = columns.map((column, index) => column.minimum ?? widths[index] ?? 0);
  // The widest column that may still shrink gives way first, one step at a time: columns are few.
  for (const floor of [least, columns.map(() => 2)]) {
    while (sum(widths) > room) {
      let widest = -1;
      widths.forEach((each, index) => {
        const free = each > (floor[index] ?? 0);
        if (free && (widest < 0 || each > (widths[widest] ?? 0))) widest = index;
      });
      if (widest < 0) break;
      widths[widest] = (widths[widest] ?? 0) - 1;
    }
  }
  return widths;
}

function layOut(input: {
  readonly columns: readonly TextColumn[];
  readonly widths: readonly number[];
  readonly cells: readonly string[];
  readonly dressed: boolean;
}): readonly string[] {
  const { columns, widths, cells, dressed } = input;
  const wrapped = cells.map((cell, index) => wrapText(cell, { width: widths[index] ?? 1 }));
  const height = Math.max(...wrapped.map((lines) => lines.length));
  return Array.from({ length: height }, (_, row) => {
    const parts = columns.map((column, index) => {
      const text = wrapped[index]?.[row] ?? '';
      const blank = ' '.repeat(Math.max(0, (widths[index] ?? 0) - displayWidth(text)));
      const padded = column.align === 'right' ? blank + text : text + blank;
      const dress = dressed && text !== '' ? column.dress : undefined;
      return dress === undefined ? padded : dress(padded, cells[index] ?? '');
    });
    return parts.join(gap).trimEnd();
  });
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function same(line: string): string {
  return line;
}
