/**
 * What steers a terminal or cannot be seen: control and format characters, separators of lines. The two joiners stay,
 * because scripts and emoji are written with them.
 */
const unseen = /(?![\u200c\u200d])[\p{Cc}\p{Cf}\u2028\u2029]/gu;

/**
 * A text that cannot steer a terminal: control characters, line ends, marks that turn the direction of writing and
 * what cannot be seen stand as `\u001b`.
 *
 * @param text - any text, e.g. a path from the command line
 * @returns the same text, on one line
 *
 * @example
 * visibleControls('a\nb'); // => 'a\\u000ab'
 */
export function visibleControls(text: string): string {
  return text.replace(unseen, (character) =>
    Array.from(
      { length: character.length },
      (_, unit) => `\\u${character.charCodeAt(unit).toString(16).padStart(4, '0')}`,
    ).join(''),
  );
}

/**
 * A value as JSON in lines, in which no text can steer a terminal: what cannot be seen is escaped, so that it reads
 * back as it was.
 *
 * @param value - plain data
 * @returns JSON, indented by two spaces, without a line end
 */
export function printableJson(value: unknown): string {
  // Inside a text a line end is escaped already; those that are left are of the layout.
  return JSON.stringify(value, null, 2).split('\n').map(visibleControls).join('\n');
}
