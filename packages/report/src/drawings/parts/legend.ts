import type { Markup } from '../../internal/markup.js';
import { markup } from '../../internal/markup.js';
import { textLines, textRows } from './text-rows.js';

/** A row of a legend: what stands in the drawing, and what it means. */
export interface LegendRow {
  /** Draws the piece beside a row whose first baseline is given. */
  readonly key: (y: number) => Markup;
  readonly text: string;
}

/** Room for the piece before the words [px]. */
const keyRoom = 38;

/**
 * A legend under a drawing; a text that is too long for one line goes on in the next.
 *
 * @param rows - in order
 * @param place - width and the first baseline [px]
 * @returns the legend, and where it ends [px]
 */
export function legend(
  rows: readonly LegendRow[],
  place: { readonly width: number; readonly top: number },
): { readonly drawn: Markup; readonly end: number } {
  const { width, top } = place;
  const placed = textRows(
    rows.map(({ text }) => text),
    { width: width - keyRoom - 4, top, gap: 6 },
  );
  return {
    end: placed.end - 13,
    drawn: markup`${rows.map(({ key }, index) => {
      const { lines = [], y = top } = placed.rows[index] ?? {};
      return markup`${key(y)}${textLines(lines, { x: keyRoom, y })}`;
    })}`,
  };
}
