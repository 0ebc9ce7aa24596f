import { plainText } from './plain-text.js';
import { withGluedUnits, withMinus } from './typeset.js';

/** Finished HTML or SVG. Only {@link markup} makes it from text, and it escapes what it is given. */
export interface Markup {
  readonly finished: string;
}

/** What may stand in a template: text is escaped, finished markup and lists of it are not. */
export type MarkupPart = string | number | Markup | readonly Markup[] | undefined;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function typeset(text: string): string {
  return withGluedUnits(withMinus(text), '\u00a0');
}

/** Code points that XML does not allow even as references. */
const nonCharacters = /[\ufffe\uffff]/gu;

/**
 * A template of HTML or SVG in which every text is escaped, so that no name can become markup; what is read gets
 * the sign of subtraction and no line end between number and unit.
 *
 * @param pieces - the template's own pieces, which are trusted
 * @param parts - texts, numbers and finished markup between them
 * @returns finished markup
 *
 * @example
 * markup`<td>${'<b>'}</td>`.finished; // => '<td>&lt;b&gt;</td>'
 */
export function markup(pieces: TemplateStringsArray, ...parts: readonly MarkupPart[]): Markup {
  let finished = '';
  let insideTag = false;
  for (const [index, piece] of pieces.entries()) {
    if (index > 0) finished += shown(parts[index - 1], insideTag);
    finished += piece;
    // Attributes hold coordinates and names of files; only what is read is typeset.
    if (/[<>]/u.test(piece)) insideTag = piece.lastIndexOf('<') > piece.lastIndexOf('>');
  }
  return { finished };
}

/**
 * A text that shows letter for letter in HTML and SVG, in elements and in quoted attributes.
 *
 * @param text - any text, e.g. a name from a house file
 * @returns the text on one line, without control characters and marks that turn the direction of writing
 *
 * @example
 * escapeMarkup('<script>"'); // => '&lt;script&gt;&quot;'
 */
export function escapeMarkup(text: string): string {
  return plainText(text)
    .replace(nonCharacters, '\ufffd')
    .replace(/[&<>"']/gu, (character) => entities[character] ?? '');
}

function shown(part: MarkupPart, insideTag: boolean): string {
  if (part === undefined) return '';
  if (typeof part === 'string') return escapeMarkup(insideTag ? part : typeset(part));
  if (typeof part === 'number') return String(part);
  if ('finished' in part) return part.finished;
  return part.map(({ finished }) => finished).join('');
}
