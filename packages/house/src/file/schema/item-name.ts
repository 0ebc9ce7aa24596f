import type * as z from 'zod';
import { accept, refuse, type ValueResult } from './file-problem.js';
import { leaf } from './leaf.js';
import { shapeOf, shapeWords } from './shape-of.js';

/** The longest name [characters]. */
const longestName = 60;

/**
 * Schema of a name: of the house, or of an item that stands elsewhere in the file.
 *
 * @param description - what is named
 * @param examples - what may be typed
 * @returns the schema
 */
export function itemName(description: string, examples: readonly string[]): z.ZodType<string> {
  return leaf({ description, examples, jsonSchema: { type: 'string', minLength: 1 } }, (value) => {
    const shape = shapeOf(value);
    if (shape !== 'text' && shape !== 'number') {
      return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: examples });
    }
    return checkName(String(value));
  });
}

/**
 * Whether a text can be a name: not empty, not too long, nothing invisible in it.
 *
 * @param name - the text
 * @returns the name without spaces around it, or what is wrong
 */
export function checkName(name: string): ValueResult<string> {
  const plain = name.trim();
  if (plain === '') return refuse('name.empty', {});
  if (plain.length > longestName) {
    return refuse('name.too-long', { found: `${plain.slice(0, 40)}…`, length: plain.length });
  }
  // Control and format characters, line breaks, half surrogates: they would garble a report.
  if (/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u.test(plain)) return refuse('name.invisible', {});
  return accept(plain);
}
