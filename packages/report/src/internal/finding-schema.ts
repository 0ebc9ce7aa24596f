import * as z from 'zod';
import { pressurePa, sourceSchema, text, verdictSchema } from './shared-schemas.js';

/** One appliance held against one limit. */
export const findingSchema = z
  .strictObject({
    appliance: text,
    zone: text,
    verdict: verdictSchema,
    limitSet: text,
    reason: z.exactOptional(text),
    judged: z.exactOptional(
      z.strictObject({
        limitId: text,
        condition: text,
        quantity: z.enum(['change from baseline', 'zone minus outdoors']),
        valuePa: pressurePa,
        limitPa: pressurePa,
        marginPa: pressurePa,
        nearBandPa: pressurePa,
        baselinePa: pressurePa,
        situation: z.strictObject({ label: text, weather: text, airtightness: text }),
        source: sourceSchema,
        testSetUp: text,
      }),
    ),
    cures: z.array(text),
    notes: z.array(text),
  })
  .meta({ id: 'finding' });
