import * as z from 'zod';
import { stoppedSchema } from './incomplete-schema.js';
import { count, pressurePa, sourceSchema, text } from './shared-schemas.js';

const share = z.number().meta({ unit: '-' });

const spread = z.strictObject({
  mean: pressurePa,
  standardDeviation: pressurePa,
  percentiles: z
    .tuple([pressurePa, pressurePa, pressurePa, pressurePa, pressurePa])
    .meta({ description: 'Below which 5, 25, 50, 75 and 95 of 100 samples lie.' }),
});

/** What is known of pressures where inputs are only known as ranges. */
export const uncertaintySchema = z.strictObject({
  question: z.literal('uncertainty'),
  zones: z.array(
    z.strictObject({
      zone: text,
      pressurePa: spread,
      changePa: spread,
      inputs: z.array(z.strictObject({ input: text, rankCorrelation: share, share })),
    }),
  ),
  targets: z.array(
    z.strictObject({
      target: z.strictObject({
        id: text,
        zone: text,
        quantity: z.enum(['change from baseline', 'zone minus outdoors']),
        limitPa: pressurePa,
        side: z.enum(['not below', 'not above']),
      }),
      probability: share,
      between: z.tuple([share, share]),
    }),
  ),
  ranges: z.array(
    z.strictObject({
      kind: z.enum([
        'airtightness',
        'flow exponent',
        'leak distribution',
        'device flow',
        'wind pressure',
      ]),
      device: z.exactOptional(text),
      low: z.number(),
      high: z.number(),
      shape: z.enum(['even', 'bell']),
      source: sourceSchema,
    }),
  ),
  samples: count,
  failed: count,
  seed: z.number(),
  exponents: z.array(share),
  solves: count,
  stopped: z.exactOptional(stoppedSchema),
});
