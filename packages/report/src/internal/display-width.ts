const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** One to three plain characters are by far the commonest, and need no segmenter. */
const asciiOnly = /^[\u0020-\u007e]*$/u;

/** Scripts and blocks that a terminal draws two columns wide, and what is shown as an emoji. */
const wide =
  /^(?:\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Script=Hangul}|\p{Script=Bopomofo}|\p{Script=Yi}|[\u3000-\u303e\u3200-\u33ff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}|.\ufe0f|\p{Regional_Indicator})/u;
const halfwidth = /^[\uff61-\uffdc]/u;
const invisible = /^(?:\p{Mark}|\p{Default_Ignorable_Code_Point})+$/u;

/**
 * Splits a text into what a reader sees as single characters.
 *
 * @param text - text without control characters
 * @returns graphemes in order
 */
export function graphemesOf(text: string): readonly string[] {
  if (asciiOnly.test(text)) return [...text];
  return Array.from(segmenter.segment(text), ({ segment }) => segment);
}

/**
 * Columns that a text takes in a terminal [-].
 *
 * East Asian wide characters and emoji count two, combining marks nothing. Terminals differ on
 * ambiguous characters and on joined emoji; those are counted as most do, so a column may be off by
 * one beside such a name, and nothing else.
 *
 * @param text - text without control characters
 * @returns the number of columns [-]
 *
 * @example
 * displayWidth('hood'); // => 4
 * displayWidth('厨房'); // => 4
 */
export function displayWidth(text: string): number {
  if (asciiOnly.test(text)) return text.length;
  return graphemesOf(text).reduce((sum, grapheme) => sum + graphemeWidth(grapheme), 0);
}

function graphemeWidth(grapheme: string): number {
  if (invisible.test(grapheme)) return 0;
  if (halfwidth.test(grapheme)) return 1;
  return wide.test(grapheme) ? 2 : 1;
}
