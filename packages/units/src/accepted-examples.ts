import { dimensions, type Dimension } from './dimension.js';

/**
 * Examples of what a person may type for a quantity, the commonest first.
 *
 * @param wanted - the dimension, or the dimensions, accepted in one place
 * @returns three texts for one dimension, two of each for several
 *
 * @example
 * acceptedExamples('volumeFlow'); // => ['640 cfm', '300 m3/h', '95 L/s']
 */
export function acceptedExamples(wanted: Dimension | readonly Dimension[]): readonly string[] {
  if (typeof wanted === 'string') return dimensions[wanted].examples;
  if (wanted.length === 1) return wanted.flatMap((dimension) => dimensions[dimension].examples);
  return wanted.flatMap((dimension) => dimensions[dimension].examples.slice(0, 2));
}
