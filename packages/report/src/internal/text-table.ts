import { displayWidth } from './display-width.js';
import { plainText } from './plain-text.js';
import { glue, wrapText } from './wrap-text.js';

/** One column of a table in a terminal. */
export interface TextColumn {
  readonly header: string;
  /** Numbers stand on the right. */
  readonly align?: 'left' | 'right';
  /** The column may be narrowed down to this, its words then wrap; absent: never narrowed [-]. */
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
 * Cells on the right are numbers and are never cut. Where the columns cannot stand side by side,
 * each row becomes a paragraph that names them.
 *
 * @param input - columns, rows and width
 * @returns lines of the header and of each row; a row takes several where a cell wraps
 */
export function textTable(input: TextTableInput): TextTable {
  const { columns, width, dressHeader = same } = input;
  const rows = input.rows.map((row) => columns.map((_, index) => plainText(row[index] ?? '')));
  if (narrowestTable(columns, rows) > width) {
    return { header: [], rows: rows.map((cells) => asParagraph({ columns, cells, width })) };
  }
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
  return sum(leastWidths(columns, rows)) + gap.length * (columns.length - 1);
}

function asParagraph(input: {
  readonly columns: readonly TextColumn[];
  readonly cells: readonly string[];
  readonly width: number;
}): readonly string[] {
  const named = input.columns.flatMap(({ header, align }, index) => {
    const cell = input.cells[index] ?? '';
    return cell === '' ? [] : [`${plainText(header)}:${align === 'right' ? glue : ' '}${cell}`];
  });
  return wrapText(named.join('; '), { width: input.width, rest: '  ' });
}

function naturalWidths(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
): number[] {
  return columns.map((column, index) =>
    Math.max(displayWidth(plainText(column.header)), widestCell(rows, index)),
  );
}

/** A column on the right may wrap its header, never a number. */
function leastWidths(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
): readonly number[] {
  const natural = naturalWidths(columns, rows);
  return columns.map(({ align, minimum }, index) => {
    const whole = natural[index] ?? 0;
    if (minimum === undefined) return whole;
    const uncut = align === 'right' ? Math.max(minimum, widestCell(rows, index)) : minimum;
    return Math.min(whole, uncut);
  });
}

function widestCell(rows: readonly (readonly string[])[], index: number): number {
  return rows.reduce(
    (widest, row) => Math.max(widest, displayWidth(plainText(row[index] ?? ''))),
    0,
  );
}

/** The widest column that may still give way is narrowed first, one step at a time. */
function columnWidths(input: {
  readonly columns: readonly TextColumn[];
  readonly rows: readonly (readonly string[])[];
  readonly width: number;
}): readonly number[] {
  const { columns, rows } = input;
  const room = input.width - gap.length * (columns.length - 1);
  const widths = naturalWidths(columns, rows);
  const least = leastWidths(columns, rows);
  while (sum(widths) > room) {
    const free = widths.map((each, index) => (each > (least[index] ?? 0) ? each : 0));
    const widest = free.indexOf(Math.max(...free));
    widths[widest] = (widths[widest] ?? 0) - 1;
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
