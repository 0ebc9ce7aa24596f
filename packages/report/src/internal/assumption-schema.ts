import * as z from 'zod';
import { sourceSchema, text } from './shared-schemas.js';

/** What was taken where nothing was given. */
export const assumptionSchema = z.strictObject({
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
