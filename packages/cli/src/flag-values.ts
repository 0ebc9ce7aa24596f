import { parseQuantity, quantityProblems, type Dimension } from '@evendraft/units';
import { InvalidArgumentError } from 'commander';

/**
 * Reads the reader's units.
 *
 * @param text - as typed
 * @returns us or si
 * @throws InvalidArgumentError for any other text
 */
export function unitSystem(text: string): 'us' | 'si' {
  if (text === 'us' || text === 'si') return text;
  throw new InvalidArgumentError('Write us or si.');
}

/**
 * Collects a flag that may be given again.
 *
 * @param text - as typed
 * @param before - what was given before it
 * @returns all of them, in order
 */
export function listed(text: string, before: readonly string[]): readonly string[] {
  return [...before, text];
}

/**
 * Reads a quantity with its unit.
 *
 * @param dimension - what it measures
 * @returns reads a text; throws InvalidArgumentError where it is none
 */
export function quantity(dimension: Dimension): (text: string) => number {
  return (text) => {
    const result = parseQuantity(text, dimension);
    if (result.ok) return result.quantity.valueSi;
    const { code, accepted, suggestion } = result.problem;
    const { meaning, remedy } = quantityProblems[code];
    const meant = suggestion === undefined ? '' : ` Perhaps ${suggestion}.`;
    throw new InvalidArgumentError(
      `${sentence(meaning)} ${remedy}${meant} For example ${accepted.join(', ')}.`,
    );
  };
}

/**
 * Reads a quantity with its unit that lies within a range.
 *
 * @param dimension - what it measures
 * @param range - bounds in SI, the lower one left out or included, and the range in words
 * @returns reads a text; throws InvalidArgumentError where it is none of the range
 */
export function quantityWithin(
  dimension: Dimension,
  range: {
    readonly above?: number;
    readonly from?: number;
    readonly to: number;
    readonly words: string;
  },
): (text: string) => number {
  const { above = -Infinity, from = -Infinity, to, words } = range;
  return (text) => {
    const value = quantity(dimension)(text);
    if (value > above && value >= from && value <= to) return value;
    throw new InvalidArgumentError(`It must be ${words}.`);
  };
}

/**
 * Reads a number.
 *
 * @param range - least and most, and whether it must be whole
 * @returns reads a text; throws InvalidArgumentError where it is none of the range
 */
export function number(range: {
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
}): (text: string) => number {
  const { least, most, whole = false } = range;
  return (text) => {
    const value = /^\d+(\.\d+)?$/u.test(text) ? Number(text) : Number.NaN;
    if (value >= least && value <= most && (!whole || Number.isInteger(value))) return value;
    throw new InvalidArgumentError(
      `Write a ${whole ? 'whole ' : ''}number from ${least} to ${most}.`,
    );
  };
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
