/** Characters that could move the cursor, switch colours or turn the direction of what follows. */
const commands = /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff\ufff9-\ufffb]/gu;
/** A no-break space stays, because it means something. */
const whiteSpace = /(?:[^\S\u00a0]|\u0085)+/gu;
const loneSurrogates = /\p{Surrogate}/gu;

/**
 * Text of one line without control characters, so that a name can neither command a terminal nor
 * break a table.
 *
 * @param text - any text, e.g. a name from a house file
 * @returns the text on one line; what was removed leaves a replacement character
 *
 * @example
 * plainText('utility\nroom'); // => 'utility room'
 */
export function plainText(text: string): string {
  return text
    .replace(whiteSpace, ' ')
    .replace(loneSurrogates, '\ufffd')
    .replace(commands, '\ufffd')
    .trim();
}
