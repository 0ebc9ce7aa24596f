import type { UnitSystem } from '@evendraft/units';
import { markup, type Markup } from '../internal/markup.js';
import {
  cellText,
  columnHeader,
  type ReportCell,
  type ReportColumn,
  type ReportTable,
} from '../tables/report-table.js';
import { columnRooms } from './column-rooms.js';
import { verdictTag } from './verdict-tag.js';

/** How a table is put on the page. */
export interface HtmlTableOptions {
  readonly system: UnitSystem;
  /** Rows beyond this are counted under the table instead; all of them are in CSV and JSON. */
  readonly rowsAtMost?: number;
  /** About as many lines of text: long names make rows of many lines, and these would fill dozens of sheets [-]. */
  readonly linesAtMost?: number;
}

/** Lines of a table with a row for every state: about four sheets [-]. */
export const linesOfStates = 240;

/**
 * A table with a caption, heads that repeat in print, and a row head in the first column.
 *
 * @param table - what it holds
 * @param options - units and length
 * @returns HTML; nothing where there are no rows
 */
export function htmlTable(table: ReportTable, options: HtmlTableOptions): Markup {
  const { id, caption, note, columns, rows } = withoutEmptyColumns(table);
  const { system, rowsAtMost = 100, linesAtMost = Number.POSITIVE_INFINITY } = options;
  if (rows.length === 0) return markup``;
  const shown = rows.slice(0, Math.min(rowsAtMost, rowsOfLines(rows, linesAtMost)));
  const left = rows.length - shown.length;
  const rooms = columnRooms(columns, shown, system);
  const head = columns.map(
    (column, index) =>
      markup`<th scope="col" class="${cellClass(column, rooms[index] ?? 0)}">${columnHeader(column, system)}</th>`,
  );
  const body = shown.map(
    (row) =>
      markup`<tr>${columns.map((column, index) => htmlCell(row[index], { column, system, first: index === 0 }))}</tr>\n`,
  );
  return markup`<div class="${shown.length <= shortRows ? 'scroll short' : 'scroll'}" role="region" tabindex="0" aria-labelledby="table-${id}"><table>
<caption id="table-${id}"><strong>${caption}</strong>${note === undefined ? undefined : markup`<span class="note">${note}</span>`}</caption>
<thead><tr>${head}</tr></thead>
<tbody>
${body}</tbody></table></div>
${left > 0 ? markup`<p class="note">And ${left} more rows; the tables as CSV and the result as JSON hold them all.</p>` : undefined}`;
}

/** A line of a column of long texts, on a sheet [characters]. */
const lineOfText = 28;
/** So many rows are shown however long they are. */
const leastRows = 10;

/** How many rows have no more than so many lines together. */
function rowsOfLines(rows: ReportTable['rows'], linesAtMost: number): number {
  let lines = 0;
  const first = rows.findIndex((row, index) => {
    const longest = Math.max(0, ...row.map((cell) => (typeof cell === 'string' ? cell.length : 0)));
    lines += Math.max(1, Math.ceil(longest / lineOfText));
    return index >= leastRows && lines > linesAtMost;
  });
  return first < 0 ? rows.length : first;
}

/** A column of numbers that nobody has takes room from the others. */
function withoutEmptyColumns(table: ReportTable): ReportTable {
  const kept = table.columns.map(
    ({ quantity }, index) =>
      quantity === undefined || table.rows.some((row) => row[index] !== undefined),
  );
  return {
    ...table,
    columns: table.columns.filter((_, index) => kept[index]),
    rows: table.rows.map((row) => row.filter((_, index) => kept[index])),
  };
}

/** A row must fit on a sheet, whatever names stand in it; files of the tables hold texts whole. */
const longestText = 900;

function shortened(text: string): string {
  if (text.length <= longestText) return text;
  return `${text.slice(0, longestText)}… (shortened here, whole in CSV and JSON)`;
}

/** A table of so few rows is never split in print. */
const shortRows = 10;

function htmlCell(
  cell: ReportCell,
  place: { readonly column: ReportColumn; readonly system: UnitSystem; readonly first: boolean },
): Markup {
  const { column, system, first } = place;
  const text = shortened(cellText(cell, column, system));
  const quantity = column.quantity === undefined ? undefined : markup` class="n"`;
  const shown = verdictTag(text) ?? markup`${text}`;
  return first
    ? markup`<th scope="row"${quantity}>${shown}</th>`
    : markup`<td${quantity}>${shown}</td>`;
}

function cellClass({ quantity }: ReportColumn, room: number): string {
  return quantity === undefined ? `c${room}` : 'n';
}
