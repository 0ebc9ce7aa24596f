import type { UnitSystem } from '@evendraft/units';
import { displayWidth } from '../internal/display-width.js';
import { plainText } from '../internal/plain-text.js';
import {
  cellText,
  columnHeader,
  type ReportColumn,
  type ReportTable,
} from '../tables/report-table.js';

/** The least room of a column that the style knows [characters]. */
export const leastRoom = 3;
/** The most [characters]. */
export const mostRoom = 30;

/** Words longer than this are broken, short texts up to this are not [characters]. */
const wordRoom = 14;
/** A word that is never broken: a verdict in its frame [characters]. */
const tagRoom = 17;
/** Columns of texts take no less, however many there are [characters]. */
const squeezedRoom = 6;
/** What stands side by side on the narrower of two sheets, with the gaps between columns [characters]. */
const sheetRoom = 104;
const gap = 2;

/**
 * Room for the longest word of each column, and more for long texts; where all together would be wider than a sheet,
 * the widest give way, because a browser prints a page that is too wide smaller, with all of its text.
 *
 * @param columns - columns of the table
 * @param rows - rows that are shown
 * @param system - units of the reader
 * @returns room of each column [characters]
 */
export function columnRooms(
  columns: readonly ReportColumn[],
  rows: ReportTable['rows'],
  system: UnitSystem,
): readonly number[] {
  const rooms = columns.map((column, index) => {
    const cells = rows.map((row) => row[index]);
    return column.quantity === undefined
      ? textRoom(
          column,
          cells.filter((cell) => typeof cell === 'string'),
        )
      : Math.max(
          ...wordLengths(columnHeader(column, system)).map((length) => length + 1),
          ...cells.map((cell) => cellText(cell, column, system).length),
        );
  });
  const gives = columns.map(
    ({ quantity, header }) => quantity === undefined && header !== 'Finding',
  );
  const total = (): number => rooms.reduce((sum, room) => sum + room + gap, 0);
  while (total() > sheetRoom) {
    const widest = Math.max(...rooms.filter((_, index) => gives[index]), squeezedRoom);
    const place = rooms.findIndex((room, index) => gives[index] === true && room === widest);
    if (place < 0 || widest <= squeezedRoom) break;
    rooms[place] = widest - 1;
  }
  return rooms;
}

function textRoom({ header }: ReportColumn, texts: readonly string[]): number {
  if (header === 'Finding') return tagRoom;
  // Heads are bold, and so a little wider; a short text is not worth a second line.
  const words = [
    ...wordLengths(header).map((length) => length + 1),
    ...texts.flatMap((text) =>
      text.length <= wordRoom ? [displayWidth(text)] : wordLengths(text),
    ),
  ];
  const longText = longTextRoom(Math.max(0, ...texts.map((text) => text.length)));
  return Math.max(leastRoom, longText, Math.min(wordRoom, Math.max(0, ...words)));
}

/** The longer a text, the wider its column, so that its rows do not become towers. */
function longTextRoom(letters: number): number {
  if (letters > 200) return mostRoom;
  return letters > 36 ? 20 : 0;
}

function wordLengths(text: string): readonly number[] {
  return plainText(text)
    .split(/[\s-]/u)
    .map((word) => displayWidth(word));
}
