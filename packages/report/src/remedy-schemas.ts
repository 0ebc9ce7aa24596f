import type * as z from 'zod';
import { comparisonObjectSchema, sizingObjectSchema } from './internal/remedy-schema.js';
import type { Comparison, Sizing } from './remedy-results.js';

/**
 * What a sizing is, strictly: an unknown key is an error, and no number is NaN or infinite.
 *
 * The published JSON Schema is made from it.
 */
export const sizingSchema: z.ZodType<Sizing> = sizingObjectSchema;

/**
 * What a comparison of remedies is, as strictly.
 *
 * The published JSON Schema is made from it.
 */
export const comparisonSchema: z.ZodType<Comparison> = comparisonObjectSchema;
