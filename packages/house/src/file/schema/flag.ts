import type * as z from 'zod';
import { accept, refuse } from './file-problem.js';
import { leaf } from './leaf.js';
import { shapeOf, shapeWords } from './shape-of.js';

const spellings: Readonly<Record<string, boolean>> = {
  true: true,
  yes: true,
  on: true,
  false: false,
  no: false,
  off: false,
};

/**
 * Schema of a yes or no.
 *
 * @param description - what yes means
 * @returns the schema
 */
export function flag(description: string): z.ZodType<boolean> {
  const examples = [true, false];
  const jsonSchema = { enum: [true, false, 'yes', 'no'] };
  return leaf({ description, examples, jsonSchema }, (value) => {
    if (typeof value === 'boolean') return accept(value);
    const shape = shapeOf(value);
    const meant = shape === 'text' ? spellings[String(value).trim().toLowerCase()] : undefined;
    if (meant !== undefined) return accept(meant);
    if (shape === 'text') {
      const found = String(value).slice(0, 60);
      return refuse('value.unknown-word', { found, allowed: ['true', 'false'] });
    }
    return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: ['true', 'false'] });
  });
}
