import { markup, type Markup } from '../../internal/markup.js';
import { label } from './marks.js';
import { textLines, textRows, type TextRow } from './text-rows.js';

/** Room for a mark before the words it stands for [px]. */
const markRoom = 24;
/** A drawing that is wider has two columns [px]. */
const twoColumnsFrom = 560;
const columnGap = 20;

/**
 * What the marks of a drawing stand for, as a list in one column or two.
 *
 * @param entries - mark and words, in order
 * @param place - width and top of the list [px]
 * @returns the list, and where it ends [px]
 */
export function keyedList(
  entries: readonly { readonly mark: string; readonly text: string }[],
  place: { readonly width: number; readonly top: number },
): { readonly drawn: Markup; readonly end: number } {
  const { width, top } = place;
  const columns = width >= twoColumnsFrom ? 2 : 1;
  const columnWidth = (width - (columns - 1) * columnGap) / columns;
  const perColumn = Math.ceil(entries.length / columns);
  const placed = Array.from({ length: columns }, (_, column) => {
    const own = entries.slice(column * perColumn, (column + 1) * perColumn);
    const { rows, end } = textRows(
      own.map(({ text }) => text),
      { width: columnWidth - markRoom, top: top + 12 },
    );
    const x = column * (columnWidth + columnGap);
    return { end, drawn: own.map(({ mark }, index) => entry(mark, { x, row: rows[index] })) };
  });
  return {
    drawn: markup`${placed.flatMap(({ drawn }) => drawn)}`,
    end: entries.length === 0 ? top : Math.max(...placed.map(({ end }) => end)) - 6,
  };
}

/**
 * A letter for a place in a list: A to Z, then AA and so on.
 *
 * @param index - from 0
 * @returns one or more capitals
 */
export function keyLetter(index: number): string {
  const before = Math.floor(index / 26);
  return `${before === 0 ? '' : keyLetter(before - 1)}${String.fromCharCode(65 + (index % 26))}`;
}

function entry(
  mark: string,
  { x, row }: { readonly x: number; readonly row: TextRow | undefined },
): Markup {
  if (row === undefined) return markup``;
  return markup`${[
    label(mark, { x, y: row.y, bold: true }),
    textLines(row.lines, { x: x + markRoom, y: row.y }),
  ]}`;
}
