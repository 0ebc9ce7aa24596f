import { displayWidth, graphemesOf } from './display-width.js';
import { plainText } from './plain-text.js';

/** How a paragraph is laid out. */
export interface WrapOptions {
  /** Columns of the line, indents included [-]. */
  readonly width: number;
  /** Before the first line, e.g. a bullet. */
  readonly first?: string;
  /** Before every further line. */
  readonly rest?: string;
}

/**
 * Breaks a text between words into lines of at most a width; a word longer than a line is cut.
 *
 * @param text - one paragraph; line ends and control characters in it are taken out
 * @param options - width and indents
 * @returns at least one line, none wider than asked
 *
 * @example
 * wrapText('one two three', { width: 8 }); // => ['one two', 'three']
 */
export function wrapText(text: string, options: WrapOptions): readonly string[] {
  const { width, first = '', rest = '' } = options;
  const lines: string[] = [];
  let line = '';
  const room = (): number => width - displayWidth(lines.length === 0 ? first : rest);
  const finish = (): void => {
    lines.push((lines.length === 0 ? first : rest) + line);
    line = '';
  };
  for (const word of plainText(text).split(' ')) {
    let left = word;
    if (line !== '' && displayWidth(line) + 1 + displayWidth(left) <= room()) {
      line += ` ${left}`;
      continue;
    }
    if (line !== '') finish();
    while (displayWidth(left) > room()) {
      line = fittingStart(left, room());
      left = left.slice(line.length);
      finish();
    }
    line = left;
  }
  if (line !== '' || lines.length === 0) finish();
  return lines.map((each) => each.trimEnd());
}

/** The longest start of a word that fits, and at least one character, so that cutting ends. */
function fittingStart(word: string, room: number): string {
  let start = '';
  for (const grapheme of graphemesOf(word)) {
    if (start !== '' && displayWidth(start + grapheme) > room) break;
    start += grapheme;
  }
  return start;
}
