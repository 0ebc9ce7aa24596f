import * as z from 'zod';
import { stoppedSchema } from './incomplete-schema.js';
import { count, pressurePa, text, volumeFlowM3PerS } from './shared-schemas.js';

const situation = {
  state: z.strictObject({
    running: z.record(text, text),
    doors: z.record(text, z.enum(['open', 'shut'])),
    firing: z.exactOptional(z.record(text, text)),
  }),
  label: text,
  weather: text,
  airtightness: text,
};

const balanceCount = { stableBalances: count, counted: z.boolean(), complete: z.boolean() };

const balanceSchema = z.strictObject({
  status: z.literal('solved'),
  ...situation,
  zones: z.array(z.strictObject({ zone: text, pressurePa, changeFromBaselinePa: pressurePa })),
  devices: z.array(
    z.strictObject({
      device: text,
      speed: text,
      ratedFlowM3PerS: volumeFlowM3PerS,
      deliveredFlowM3PerS: volumeFlowM3PerS,
      interlocked: z.boolean(),
    }),
  ),
  makeUp: z.array(
    z.strictObject({
      opening: text,
      damper: z.enum(['open', 'closed']),
      flowM3PerS: volumeFlowM3PerS,
      faceVelocityMPerS: z.exactOptional(z.number().meta({ unit: 'm/s' })),
    }),
  ),
  columns: z.exactOptional(
    z.strictObject({
      ...balanceCount,
      states: z.array(
        z.strictObject({ item: text, link: text, state: z.enum(['upward', 'downward', 'still']) }),
      ),
    }),
  ),
  baselineColumns: z.exactOptional(z.strictObject(balanceCount)),
  warnings: z.exactOptional(
    z.array(
      z.strictObject({
        item: text,
        part: z.exactOptional(text),
        code: z.enum(['VelocityBeyondLaw', 'RoughnessBeyondLaw', 'ReynoldsBeyondLaw']),
        found: z.number(),
        most: z.number(),
        unit: text,
      }),
    ),
  ),
  proof: z.strictObject({
    iterations: count,
    largestRelativeResidual: z.number().meta({ unit: '-' }),
    enclosureRadiusPa: z.exactOptional(pressurePa),
    unique: z.boolean(),
    worstZone: z.exactOptional(text),
    worstLink: z.exactOptional(text),
    regularisationPa: pressurePa,
  }),
});

const unsolvedSchema = z.strictObject({
  status: z.literal('not solved'),
  ...situation,
  reason: text,
  concerns: z.array(text),
  hint: text,
});

/** The extreme pressure of a zone, with its situation. */
export const worstPressureSchema = z.strictObject({
  ...situation,
  pressurePa,
  changeFromBaselinePa: pressurePa,
  baselinePa: pressurePa,
});

/** All states in all weathers at all airtightness cases. */
export const worstCaseSchema = z.strictObject({
  question: z.literal('worst case'),
  situations: z.array(balanceSchema),
  unsolved: z.array(unsolvedSchema),
  zones: z.array(
    z.strictObject({ zone: text, lowest: worstPressureSchema, largestFall: worstPressureSchema }),
  ),
  appliances: z.array(
    z.strictObject({
      appliance: text,
      zone: text,
      lowest: worstPressureSchema,
      largestFall: worstPressureSchema,
    }),
  ),
  counts: z.strictObject({
    states: count,
    weathers: count,
    airtightnessCases: count,
    solves: count,
  }),
  coverage: z.exactOptional(
    z.strictObject({
      situations: count,
      ordered: z.array(text),
      notOrdered: z.array(text),
      proved: z.boolean(),
    }),
  ),
  stopped: z.exactOptional(stoppedSchema),
  proof: z.strictObject({
    largestRelativeResidual: z.number().meta({ unit: '-' }),
    largestEnclosureRadiusPa: pressurePa.nullable(),
    notEnclosed: count,
    mostIterations: count,
  }),
});
