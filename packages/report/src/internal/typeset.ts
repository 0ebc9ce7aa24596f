/** A hyphen before a digit that opens a text or a word, colour of a terminal aside: a minus. */
const minus = /(?<=^|[\s(]|\u001b\[[\d;]*m)-(?=\d)/gmu;

/** A space between a number and its unit. */
const beforeUnit =
  /(?<=\d) (?=(?:k?Pa|cfm|L\/s|m³\/[sh]|fpm|mph|m\/s|°[FC]|ft[²³]?|in²?|[mc]?m²?|m³|k?Btu\/h|kWh?|W|ppm|min|h|s|%|K)(?![\p{L}\d]))/gu;

/**
 * Text with the sign of subtraction where a hyphen stands before a number, as every report but JSON and CSV prints it.
 *
 * @param text - any text
 * @returns the same text, as wide as before
 *
 * @example
 * withMinus('from -5 to 3 Pa'); // => 'from −5 to 3 Pa'
 */
export function withMinus(text: string): string {
  return text.replace(minus, '\u2212');
}

/**
 * Text in which no line ends between a number and its unit.
 *
 * @param text - any text
 * @param glue - what stands in place of the space
 * @returns the text
 *
 * @example
 * withGluedUnits('12 Pa', '_'); // => '12_Pa'
 */
export function withGluedUnits(text: string, glue: string): string {
  return text.replace(beforeUnit, glue);
}
