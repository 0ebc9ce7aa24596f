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
  let place: Place = 'prose';
  let element = '';
  for (const [index, piece] of pieces.entries()) {
    if (index > 0) finished += shown(parts[index - 1], place);
    finished += piece;
    element = /<([a-z]+)[^<]*$/u.exec(piece)?.[1] ?? element;
    if (!/[<>]/u.test(piece)) continue;
    if (piece.lastIndexOf('<') > piece.lastIndexOf('>')) place = 'tag';
    else place = textOnly.includes(element) ? 'text' : 'prose';
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

/** Attributes hold coordinates and names of files; only what is read is typeset. */
type Place = 'tag' | 'text' | 'prose';

/** Elements that hold nothing but text. */
const textOnly: readonly string[] = ['text', 'title', 'desc'];

/** Words of a script that runs to the left, with what stands between them. */
const leftwards =
  /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}](?:[^\p{Letter}\p{Number}&<>]*[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Mark}])*/gu;

function shown(part: MarkupPart, place: Place): string {
  if (part === undefined) return '';
  if (typeof part === 'string') {
    if (place === 'tag') return escapeMarkup(part);
    const text = escapeMarkup(typeset(part));
    // A number behind such a name would be drawn before it.
    return place === 'text' ? text : text.replace(leftwards, '<bdi>$&</bdi>');
  }
  if (typeof part === 'number') return String(part);
  if ('finished' in part) return part.finished;
  return part.map(({ finished }) => finished).join('');
}
