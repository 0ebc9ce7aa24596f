import { markup, type Markup } from '../../internal/markup.js';
import { wrapLabel } from './fit-text.js';
import { label, textSize, type Label } from './marks.js';

/** From one line of a text to the next [px]. */
export const lineHeight = 15;

/** A text in as many lines as it needs, with the place of its first. */
export interface TextRow {
  readonly lines: readonly string[];
  /** Baseline of the first line [px]. */
  readonly y: number;
}

/**
 * Texts under each other, each in as many lines as it needs.
 *
 * @param texts - one a row
 * @param room - width of a line, baseline of the first row, and what two rows keep apart beside their lines [px]
 * @returns the rows, and the baseline that the next row would have [px]
 */
export function textRows(
  texts: readonly string[],
  room: { readonly width: number; readonly top: number; readonly gap?: number },
): { readonly rows: readonly TextRow[]; readonly end: number } {
  const { width, top, gap = 3 } = room;
  const rows: TextRow[] = [];
  let y = top;
  for (const text of texts) {
    const lines = wrapLabel(text, { width, size: textSize });
    rows.push({ lines, y });
    y += lines.length * lineHeight + gap;
  }
  return { rows, end: y };
}

/**
 * The lines of a text, one under the other.
 *
 * @param lines - as they are broken
 * @param dress - place of the first line and dress of all
 * @returns SVG
 */
export function textLines(lines: readonly string[], dress: Label): Markup {
  return markup`${lines.map((text, index) => label(text, { ...dress, y: dress.y + index * lineHeight }))}`;
}
