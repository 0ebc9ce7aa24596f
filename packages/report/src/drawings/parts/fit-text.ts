import { displayWidth, graphemesOf } from '../../internal/display-width.js';
import { plainText } from '../../internal/plain-text.js';

/** Width of a column of a monospaced line over the text's size, on the wide side of usual fonts [-]. */
const perColumn = 0.58;
/** The same for capitals and the widest small letters [-]. */
const perWideLetter = 0.78;
/** More than a list of every device that a house may have, with names as long as they may be [-]. */
const lettersAtMost = 1500;

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
 * A text broken into lines that fit into a width, at blanks, or within a word that no line has room for. Nothing is
 * cut, so that no name becomes another; only a text that is longer than any that a house file can hold ends in `…`.
 *
 * @param text - any text, e.g. a name from a house file
 * @param room - width of a line and size of the text [px]
 * @returns at least one line
 */
export function wrapLabel(
  text: string,
  room: { readonly width: number; readonly size: number },
): readonly string[] {
  const { width, size } = room;
  const plain = plainText(text);
  const kept = plain.length > lettersAtMost ? `${plain.slice(0, lettersAtMost)}…` : plain;
  const lines: string[] = [];
  let line = '';
  for (const word of kept.split(' ').flatMap((each) => pieces(each, room))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || textWidth(longer, size) <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

/** A word in pieces of which each fits a line; most words are one. */
function pieces(
  word: string,
  { width, size }: { readonly width: number; readonly size: number },
): readonly string[] {
  if (textWidth(word, size) <= width) return [word];
  const found: string[] = [];
  let piece = '';
  let used = 0;
  for (const grapheme of graphemesOf(word)) {
    const more = textWidth(grapheme, size);
    if (piece !== '' && used + more > width) {
      found.push(piece);
      [piece, used] = ['', 0];
    }
    piece += grapheme;
    used += more;
  }
  return [...found, piece];
}
