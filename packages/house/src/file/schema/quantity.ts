import { acceptedExamples, parseQuantity, unitsOf, type Dimension } from '@evendraft/units';
import type * as z from 'zod';
import { accept, refuse, type ValueResult } from './file-problem.js';
import { leaf } from './leaf.js';
import { shapeOf, shapeWords } from './shape-of.js';

/** The numbers that are allowed for a quantity, in SI. */
export interface AllowedRange {
  /** Must be greater than this. */
  readonly above?: number;
  /** Must be this or more. */
  readonly from?: number;
  /** Must be this or less. */
  readonly to?: number;
  /** The range as a message says it: `more than 0`. */
  readonly words: string;
}

/** How a quantity is described. */
export interface QuantityOptions {
  readonly description: string;
  readonly allowed: AllowedRange;
  /** Instead of the dimension's own examples. */
  readonly examples?: readonly string[];
}

/**
 * Schema of a quantity typed with its unit; its output is the number in SI.
 *
 * @param dimension - what is measured
 * @param options - what it means and which numbers are allowed
 * @returns the schema
 */
export function quantity(dimension: Dimension, options: QuantityOptions): z.ZodType<number> {
  const examples = options.examples ?? acceptedExamples(dimension);
  const units = unitsOf(dimension).map((unit) => unit.symbol);
  return leaf(
    {
      description: `${options.description} Units: ${units.join(', ')}.`,
      examples,
      jsonSchema: { type: 'string', unit: dimension },
    },
    (value) => readQuantity(value, { dimension, allowed: options.allowed, examples }),
  );
}

/**
 * Reads a quantity from text; a bare number is refused with the unit that is probably meant.
 *
 * @param value - what stands in the file
 * @param wanted - dimension, allowed numbers, and examples for messages
 * @returns the number in SI, or what is wrong
 */
export function readQuantity(
  value: unknown,
  wanted: {
    readonly dimension: Dimension;
    readonly allowed: AllowedRange;
    readonly examples: readonly string[];
  },
): ValueResult<number> {
  const shape = shapeOf(value);
  if (shape !== 'text' && shape !== 'number') {
    return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: wanted.examples });
  }
  const text = String(value);
  const parsed = parseQuantity(text, wanted.dimension);
  if (!parsed.ok) {
    const { code, found, suggestion, measured } = parsed.problem;
    return refuse(code, {
      found,
      accepted: wanted.examples,
      ...(suggestion === undefined ? {} : { suggestion }),
      ...(measured === undefined ? {} : { measured }),
    });
  }
  const { valueSi } = parsed.quantity;
  if (isAllowed(valueSi, wanted.allowed)) return accept(valueSi);
  return refuse('value.out-of-range', { found: text.trim(), allowed: wanted.allowed.words });
}

/**
 * Whether a number lies in a range.
 *
 * @param value - the number
 * @param allowed - the range
 * @returns whether it does; never for NaN
 */
export function isAllowed(value: number, allowed: AllowedRange): boolean {
  const { above = -Infinity, from = -Infinity, to = Infinity } = allowed;
  return value > above && value >= from && value <= to;
}
