import type * as z from 'zod';
import type { Assessment } from './assessment.js';
import { assessmentObjectSchema } from './internal/assessment-object-schema.js';

/**
 * What an assessment is, strictly: an unknown key is an error, and no number is NaN or infinite.
 *
 * The published JSON Schema is made from it.
 */
export const assessmentSchema: z.ZodType<Assessment> = assessmentObjectSchema;
