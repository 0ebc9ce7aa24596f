/**
 * The id of a compiled link: its steps joined by `/`. Whatever the names are, two different lists of steps
 * never give the same id, because `~` and `/` inside a step are written `~0` and `~1`.
 *
 * Source: RFC 6901, JSON Pointer, section 3, which escapes the same two characters in the same way.
 *
 * @param steps - what the link is, the names of the items it belongs to, and what tells it from its like
 * @returns the id
 *
 * @example
 * linkId('device', 'hood', 'high'); // => 'device/hood/high'
 * linkId('device', 'hood/high'); // => 'device/hood~1high'
 */
export function linkId(...steps: readonly (string | number)[]): string {
  return steps.map((step) => String(step).replaceAll('~', '~0').replaceAll('/', '~1')).join('/');
}
