import { plainText } from './plain-text.js';
import { withMinus } from './typeset.js';

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

/** What at the start of a line would begin a list or draw a rule. */
const listOrRule = /^(?:-(?=[\s-]|$)|\+(?=\s|$))/u;
const numberedItem = /^(\d{1,9})([.)])(?=\s|$)/u;

/**
 * Text as Markdown shows it letter for letter: no markup, no HTML, no table border, no link.
 *
 * Holds for CommonMark with the usual tables, strike-through, footnotes, formulas and bare
 * addresses. Quotation marks stay, because nothing is ever put into an attribute.
 *
 * @param text - any text, e.g. a name from a house file
 * @returns Markdown of one line
 *
 * @example
 * escapeMarkdown('hood | <b>'); // => 'hood \\| &lt;b&gt;'
 */
export function escapeMarkdown(text: string): string {
  return withMinus(plainText(text))
    .replace(/[\\`*_[\]~|#^$]/gu, '\\$&')
    .replace(/[&<>]/gu, (character) => entities[character] ?? '')
    .replace(/:\/\//gu, ':&#47;&#47;')
    .replace(/www\./giu, (start) => `${start.slice(0, -1)}&#46;`)
    .replace(/@/gu, '&#64;')
    .replace(listOrRule, '\\$&')
    .replace(numberedItem, '$1\\$2');
}
