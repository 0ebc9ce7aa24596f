import type { UnitSystem } from '@evendraft/units';
import { displayWidth } from '../internal/display-width.js';
import { markup, type Markup } from '../internal/markup.js';
import { plainText } from '../internal/plain-text.js';
import {
  cellText,
  columnHeader,
  type ReportCell,
  type ReportColumn,
  type ReportTable,
} from '../tables/report-table.js';
import { verdictTag } from './verdict-tag.js';

/** How a table is put on the page. */
export interface HtmlTableOptions {
  readonly system: UnitSystem;
  /** Rows beyond this are counted under the table instead; all of them are in CSV and JSON. */
  readonly rowsAtMost?: number;
}

/**
 * A table with a caption, heads that repeat in print, and a row head in the first column.
 *
 * @param table - what it holds
 * @param options - units and length
 * @returns HTML; nothing where there are no rows
 */
export function htmlTable(table: ReportTable, options: HtmlTableOptions): Markup {
  const { id, caption, note, columns, rows } = withoutEmptyColumns(table);
  const { system, rowsAtMost = 100 } = options;
  if (rows.length === 0) return markup``;
  const shown = rows.slice(0, rowsAtMost);
  const left = rows.length - shown.length;
  const rooms = roomsOf(columns, shown);
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
const longestText = 500;

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

/**
 * Room for the longest word of each column, and some for long texts, up to what still fits on a
 * sheet [characters].
 */
function roomsOf(columns: readonly ReportColumn[], rows: ReportTable['rows']): readonly number[] {
  return columns.map(({ header }, index) => {
    const texts = rows.map((row) => row[index]).filter((cell) => typeof cell === 'string');
    // Heads are bold, and so a little wider.
    const words = [
      ...wordLengths(`${header}`).map((length) => length + 1),
      ...texts.flatMap(wordLengths),
    ];
    const longText = Math.max(0, ...texts.map((text) => text.length)) > 36 ? longTextRoom : 0;
    return Math.max(3, longText, Math.min(mostRoom, Math.max(0, ...words)));
  });
}

const mostRoom = 14;
const longTextRoom = 20;

function wordLengths(text: string): readonly number[] {
  return plainText(text)
    .split(/[\s-]/u)
    .map((word) => displayWidth(word));
}

function cellClass({ quantity }: ReportColumn, room: number): string {
  return quantity === undefined ? `c${room}` : 'n';
}
