import { displayWidth, graphemesOf } from './display-width.js';
import { plainText } from './plain-text.js';
import { withGluedUnits } from './typeset.js';

/** How a paragraph is laid out. */
export interface WrapOptions {
  /** Columns of the line, indents included [-]. */
  readonly width: number;
  /** Before the first line, e.g. a bullet. */
  readonly first?: string;
  /** Before every further line. */
  readonly rest?: string;
}

/** A space at which no line ends. Lines have plain spaces in its place. */
export const glue = '\u00a0';

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
  let used = 0;
  const indent = (): string => (lines.length === 0 ? first : rest);
  const finish = (): void => {
    lines.push((indent() + line).replaceAll(glue, ' ').trimEnd());
    line = '';
    used = 0;
  };
  for (const word of wordsOf(text, width - Math.max(displayWidth(first), displayWidth(rest)))) {
    const needed = displayWidth(word);
    if (line !== '') {
      if (used + 1 + needed <= width - displayWidth(indent())) {
        line += ` ${word}`;
        used += 1 + needed;
        continue;
      }
      finish();
    }
    if (needed <= width - displayWidth(indent())) {
      line = word;
      used = needed;
      continue;
    }
    // Each line takes at least one character, so that cutting ends whatever the width.
    for (const grapheme of graphemesOf(word)) {
      const step = displayWidth(grapheme);
      if (line !== '' && used + step > width - displayWidth(indent())) finish();
      line += grapheme;
      used += step;
    }
  }
  if (line !== '' || lines.length === 0) finish();
  return lines;
}

/** What may not be torn; where glued words are longer than a line, each is one of its own. */
function wordsOf(text: string, room: number): readonly string[] {
  const words = withGluedUnits(plainText(text), glue).split(' ');
  return words.flatMap((word) => (displayWidth(word) > room ? word.split(glue) : [word]));
}
