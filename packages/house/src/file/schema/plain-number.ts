import type * as z from 'zod';
import { accept, refuse } from './file-problem.js';
import { leaf } from './leaf.js';
import { isAllowed, type AllowedRange } from './quantity.js';
import { shapeOf, shapeWords } from './shape-of.js';

/**
 * Schema of a number without unit, such as a flow exponent.
 *
 * @param allowed - which numbers are allowed
 * @param description - what it means
 * @param examples - what may be typed
 * @returns the schema
 */
export function plainNumber(
  allowed: AllowedRange,
  description: string,
  examples: readonly number[],
): z.ZodType<number> {
  return leaf({ description, examples, jsonSchema: { type: 'number' } }, (value) => {
    const shape = shapeOf(value);
    const accepted = examples.map(String);
    if (shape !== 'number' && shape !== 'text') {
      return refuse('value.wrong-shape', { found: shapeWords[shape], accepted });
    }
    const text = String(value).trim();
    const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text) : NaN;
    if (Number.isNaN(number)) {
      return refuse('value.not-a-number', { found: text.slice(0, 60), accepted });
    }
    if (isAllowed(number, allowed)) return accept(number);
    return refuse('value.out-of-range', { found: text.slice(0, 60), allowed: allowed.words });
  });
}
