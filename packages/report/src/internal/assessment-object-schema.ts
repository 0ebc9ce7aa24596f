import * as z from 'zod';
import { findingSchema } from './finding-schema.js';
import { houseSummarySchema } from './house-summary-schema.js';
import { sourceSchema, text } from './shared-schemas.js';
import { worstCaseSchema } from './worst-case-schema.js';

const assumptionSchema = z.strictObject({
  origin: text,
  what: text,
  value: z.union([
    z.strictObject({
      si: z.number(),
      dimension: z.enum([
        'length',
        'area',
        'volume',
        'volumeFlow',
        'pressure',
        'temperature',
        'speed',
        'angle',
        'ratio',
      ]),
    }),
    text,
  ]),
  source: sourceSchema,
});

/** An assessment with its type as inferred, so that a test can compare it with the declared one. */
export const assessmentObjectSchema = z.strictObject({
  schema: z.literal('evendraft-assessment'),
  schemaVersion: z.literal(1),
  libraryVersion: text,
  house: houseSummarySchema,
  limitSet: z.strictObject({
    id: text,
    name: text,
    edition: text.meta({ description: "Edition of this project's data for the set." }),
  }),
  findings: z.array(findingSchema),
  worstCase: worstCaseSchema,
  assumptions: z.array(assumptionSchema),
  notModelled: z.array(text),
  cautions: z.array(text),
});
