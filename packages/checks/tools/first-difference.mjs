/**
 * Where two texts part, for a message: the line's number and both lines.
 *
 * @param {string} expected - one text
 * @param {string} found - the other
 * @param {readonly [string, string]} [labels] - what to call them
 * @returns {string | undefined} three lines; undefined if the texts are equal
 */
export function firstDifference(expected, found, labels = ['recorded', 'now']) {
  if (expected === found) return undefined;
  const [left, right] = [expected.split('\n'), found.split('\n')];
  let at = 0;
  while (at < left.length && at < right.length && left[at] === right[at]) at += 1;
  return [
    `line ${at + 1}`,
    `  ${labels[0]}: ${left[at] ?? '(nothing)'}`,
    `  ${labels[1]}: ${right[at] ?? '(nothing)'}`,
  ].join('\n');
}
