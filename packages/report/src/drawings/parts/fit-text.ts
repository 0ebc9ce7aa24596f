import { displayWidth, graphemesOf } from '../../internal/display-width.js';
import { plainText } from '../../internal/plain-text.js';

/** Width of a column of a monospaced line over the text's size, on the wide side of usual fonts [-]. */
const perColumn = 0.58;
/** The same for capitals and the widest small letters [-]. */
const perWideLetter = 0.78;

/**
 * About how wide a text will be, rather too wide than too narrow: the reader's font is not known.
 *
 * @param text - one line
 * @param size - size of the text [px]
 * @returns width [px]
 */
export function textWidth(text: string, size: number): number {
  const wide = text.match(/[A-Zmw@%<>\u2014\u2026\ufffd]/gu)?.length ?? 0;
  return size * (displayWidth(text) * perColumn + wide * (perWideLetter - perColumn));
}

/**
 * A text that fits into a width; what is cut leaves an ellipsis.
 *
 * @param text - any text, e.g. a name from a house file
 * @param width - the room there is [px]
 * @param size - size of the text [px]
 * @returns one line
 */
export function fitText(text: string, width: number, size: number): string {
  const plain = plainText(text);
  if (textWidth(plain, size) <= width) return plain;
  const kept: string[] = [];
  let used = textWidth('…', size);
  for (const grapheme of graphemesOf(plain.slice(0, 400))) {
    used += textWidth(grapheme, size);
    if (used > width) break;
    kept.push(grapheme);
  }
  return `${kept.join('').trimEnd()}…`;
}

/**
 * A text broken into lines that fit into a width; the last line takes what is left, cut if need be.
 *
 * @param text - any text
 * @param room - width and size of the text [px], and how many lines at most [-]
 * @returns at least one line
 */
export function wrapLabel(
  text: string,
  room: { readonly width: number; readonly size: number; readonly lines: number },
): readonly string[] {
  const { width, size } = room;
  const words = plainText(text).slice(0, 1000).split(' ');
  const lines: string[] = [];
  let line = words.shift() ?? '';
  while (words.length > 0 && lines.length < room.lines - 1) {
    const next = words[0] ?? '';
    if (textWidth(`${line} ${next}`, size) <= width) {
      line = `${line} ${next}`;
      words.shift();
    } else {
      lines.push(fitText(line, width, size));
      line = '';
      line = words.shift() ?? '';
    }
  }
  return [...lines, fitText([line, ...words].join(' '), width, size)];
}
