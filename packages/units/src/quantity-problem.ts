import type { Dimension } from './dimension.js';

/** Why a text is not a quantity. */
export type QuantityProblemCode =
  | 'quantity.empty'
  | 'quantity.too-long'
  | 'quantity.no-number'
  | 'quantity.not-finite'
  | 'quantity.out-of-range'
  | 'quantity.zero-denominator'
  | 'quantity.ambiguous-comma'
  | 'quantity.two-numbers'
  | 'quantity.malformed'
  | 'quantity.unit-missing'
  | 'quantity.unit-unknown'
  | 'quantity.unit-ambiguous'
  | 'quantity.test-pressure'
  | 'quantity.wrong-dimension';

/** What is wrong with a text that should be a quantity; plain JSON, put into words by the caller. */
export interface QuantityProblem {
  readonly code: QuantityProblemCode;
  /** The text as typed, shortened to 60 characters. */
  readonly found: string;
  /** Examples of what is accepted in its place: `['640 cfm', '300 m3/h', '95 L/s']`. */
  readonly accepted: readonly string[];
  /** What the person probably meant, ready to be typed: `900 cfm`. */
  readonly suggestion?: string;
  /** For a wrong dimension: what the unit that was found measures. */
  readonly measured?: Dimension;
}

/** What each problem means and what the person should do; no text is ever guessed at silently. */
export const quantityProblems: Readonly<
  Record<QuantityProblemCode, { readonly meaning: string; readonly remedy: string }>
> = {
  'quantity.empty': {
    meaning: 'nothing was written',
    remedy: 'Write a number and its unit.',
  },
  'quantity.too-long': {
    meaning: 'the text is too long for a quantity',
    remedy: 'Write one number and its unit, at most 100 characters.',
  },
  'quantity.no-number': {
    meaning: 'there is no number',
    remedy: 'Write a number before the unit.',
  },
  'quantity.not-finite': {
    meaning: 'infinity and NaN are not quantities',
    remedy: 'Write a number and its unit.',
  },
  'quantity.out-of-range': {
    meaning: 'the number is too large or too small to be meant',
    remedy: 'Write a number between 1e-30 and 1e30 in size, or 0.',
  },
  'quantity.zero-denominator': {
    meaning: 'the fraction divides by zero',
    remedy: 'Write a fraction whose lower number is not 0, such as 3 1/2 in.',
  },
  'quantity.ambiguous-comma': {
    meaning: 'the comma may be a decimal comma',
    remedy: 'Write a decimal point; a comma is read only between groups of three digits: 1,200.',
  },
  'quantity.two-numbers': {
    meaning: 'there is more than one number',
    remedy: 'Write one number and its unit; a range or a list is not one quantity.',
  },
  'quantity.malformed': {
    meaning: 'the text is not a number followed by a unit',
    remedy: 'Write the number first, then its unit, and nothing else.',
  },
  'quantity.unit-missing': {
    meaning: 'the number has no unit',
    remedy: 'Write the unit after the number; none is assumed.',
  },
  'quantity.unit-unknown': {
    meaning: 'the unit is not known',
    remedy: 'Use one of the units that are accepted here.',
  },
  'quantity.unit-ambiguous': {
    meaning: 'the unit has more than one meaning in the trade',
    remedy: 'Use a unit with one meaning: kBtu/h for thousands and MMBtu/h for millions of Btu/h.',
  },
  'quantity.test-pressure': {
    meaning: 'a test pressure stands with the flow',
    remedy: 'Write the flow alone, or where a test result is asked for: 310 cfm at 50 Pa.',
  },
  'quantity.wrong-dimension': {
    meaning: 'the unit measures something else',
    remedy: 'Use one of the units that are accepted here.',
  },
};
