/**
 * Where two texts part, for a message: the line's number and both lines.
 *
 * @param {string} expected - one text
 * @param {string} found - the other
 * @returns {string | undefined} three lines; undefined if the texts are equal
 */
export function firstDifference(expected, found) {
  if (expected === found) return undefined;
  const [left, right] = [expected.split('\n'), found.split('\n')];
  let at = 0;
  while (at < left.length && at < right.length && left[at] === right[at]) at += 1;
  return [
    `line ${at + 1}`,
    `  recorded: ${left[at] ?? '(nothing)'}`,
    `  now:      ${right[at] ?? '(nothing)'}`,
  ].join('\n');
}
