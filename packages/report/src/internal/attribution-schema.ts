import * as z from 'zod';
import { count, pressurePa, text } from './shared-schemas.js';

/** Which device costs how many pascals in one zone, in one situation. */
export const attributionSchema = z.strictObject({
  question: z.literal('attribution'),
  zone: text,
  label: text,
  weather: text,
  airtightness: text,
  baselinePa: pressurePa,
  pressurePa,
  shares: z.array(
    z.strictObject({
      device: text,
      speed: text,
      sharePa: pressurePa,
      standardErrorPa: pressurePa,
      alonePa: pressurePa,
      lastPa: pressurePa,
    }),
  ),
  ladder: z.array(z.strictObject({ device: text, speed: text, pressurePa, addsPa: pressurePa })),
  method: z.union([
    z.strictObject({ kind: z.literal('all orders'), solves: count }),
    z.strictObject({
      kind: z.literal('sampled orders'),
      orders: count,
      seed: z.number(),
      solves: count,
    }),
  ]),
});
