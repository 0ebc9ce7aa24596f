import * as z from 'zod';
import { combustionFindingSchema, draftVerdictSchema } from './draft-schema.js';
import { findingSchema } from './finding-schema.js';
import { pressurePa, text, volumeFlowM3PerS } from './shared-schemas.js';

/** What stands in the way of a size. */
export const obstacleSchema = z.union([
  z.strictObject({ kind: z.literal('stays shut'), item: text }),
  z.strictObject({
    kind: z.literal('resistance'),
    item: text,
    neededFlowM3PerS: volumeFlowM3PerS,
    timesWhatItCarries: z.number().meta({ unit: '-' }),
  }),
  z.strictObject({ kind: z.literal('does not reach') }),
]);

/** What a remedy's size is. */
export const dimensionSchema = z.enum([
  'area',
  'diameter',
  'volume flow',
  'share of the highest speed',
]);

const makeUpSchema = z.strictObject({
  remedy: text,
  dimension: dimensionSchema,
  size: z.number().meta({ description: 'Area in m², diameter in m, volume flow in m³/s, share.' }),
  keepsLimits: z.boolean(),
  obstacle: z.exactOptional(obstacleSchema),
});

const exhaustPoint = { exhaustFlowM3PerS: volumeFlowM3PerS, pressurePa };

/** Pressure of a zone against the flow of one device. */
export const exhaustCurveSchema = z.strictObject({
  question: z.literal('exhaust curve'),
  device: text,
  zone: text,
  baselinePa: pressurePa,
  points: z.array(z.strictObject(exhaustPoint)),
  operatingPoints: z.array(z.strictObject({ ...exhaustPoint, speed: text })),
});

/** Cures with the numbers of the house that has them. */
export const cureResultsSchema = z.union([
  z.strictObject({ status: z.literal('nothing to cure') }),
  z.strictObject({ status: z.literal('not solved'), why: text }),
  z.strictObject({
    status: z.literal('solved'),
    fluesNotSolved: z.exactOptional(text),
    appliances: z.array(
      z.strictObject({
        appliance: text,
        cures: z.array(
          z.strictObject({
            cure: text,
            together: z.exactOptional(
              z.literal(true).meta({
                description: 'Several cures made at once, where none by itself is enough.',
              }),
            ),
            makeUp: z.exactOptional(makeUpSchema),
            after: findingSchema,
            draft: z.exactOptional(
              z.strictObject({
                verdict: z.exactOptional(draftVerdictSchema),
                why: z.exactOptional(text),
                findings: z.array(combustionFindingSchema),
              }),
            ),
          }),
        ),
      }),
    ),
    makeUpCurves: z.exactOptional(
      z.strictObject({
        situation: z.strictObject({ label: text, weather: text, airtightness: text }),
        asItIs: exhaustCurveSchema,
        withMakeUp: z.array(z.strictObject({ makeUp: makeUpSchema, curve: exhaustCurveSchema })),
      }),
    ),
  }),
]);
