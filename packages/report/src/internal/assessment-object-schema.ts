import * as z from 'zod';
import { airResultsSchema } from './air-schema.js';
import { assumptionSchema } from './assumption-schema.js';
import { attributionSchema } from './attribution-schema.js';
import { cureResultsSchema } from './cure-schema.js';
import { draftResultsSchema } from './draft-schema.js';
import { houseSummarySchema } from './house-summary-schema.js';
import { incompleteSchema } from './incomplete-schema.js';
import { judgedSetShape } from './judged-set-schema.js';
import { ruleFindingSchema } from './rule-finding-schema.js';
import { text } from './shared-schemas.js';
import { uncertaintySchema } from './uncertainty-schema.js';
import { worstCaseSchema } from './worst-case-schema.js';

/** An assessment with its type as inferred, so that a test can compare it with the declared one. */
export const assessmentObjectSchema = z.strictObject({
  schema: z.literal('evendraft-assessment'),
  schemaVersion: z.literal(3),
  libraryVersion: text,
  house: houseSummarySchema,
  incomplete: z.exactOptional(incompleteSchema),
  ...judgedSetShape,
  worstCase: worstCaseSchema,
  beside: z.array(z.strictObject(judgedSetShape)),
  attribution: z.exactOptional(attributionSchema),
  cures: cureResultsSchema,
  draft: z.exactOptional(draftResultsSchema),
  air: z.exactOptional(airResultsSchema),
  screens: z.array(ruleFindingSchema),
  uncertainty: z.exactOptional(uncertaintySchema),
  assumptions: z.array(assumptionSchema),
  notModelled: z.array(text),
  cautions: z.array(text),
});
