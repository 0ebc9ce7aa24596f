import * as z from 'zod';
import { closedDamperSchema, extremeSchema, failureSchema } from './air-schema.js';
import { assumptionSchema } from './assumption-schema.js';
import { dimensionSchema, exhaustCurveSchema, obstacleSchema } from './cure-schema.js';
import { incompleteSchema, stoppedSchema } from './incomplete-schema.js';
import { ruleFindingSchema } from './rule-finding-schema.js';
import { count, pressurePa, sourceSchema, text, volumeFlowM3PerS } from './shared-schemas.js';
import { worstPressureSchema } from './worst-case-schema.js';

const kindSchema = z.enum([
  'passive opening',
  'make-up duct',
  'barometric make-up duct',
  'motorized make-up duct',
  'powered make-up air',
  'speed cap',
  'transfer opening',
  'airtightness',
  'exhaust flow',
]);

const outletSchema = z.union([
  z.strictObject({ kind: z.literal('outdoors') }),
  z.strictObject({ kind: z.literal('face'), face: z.enum(['front', 'right', 'back', 'left']) }),
  z.strictObject({ kind: z.literal('roof') }),
  z.strictObject({ kind: z.literal('zone'), zone: text }),
  z.strictObject({ kind: z.literal('surrounding'), surrounding: text }),
]);

const ratio = z.number().meta({ unit: '-' });

const builtSchema = z.strictObject({
  from: outletSchema,
  run: z.exactOptional(
    z.strictObject({
      lengthM: z.number().meta({ unit: 'm' }),
      elbows: count,
      frictionMultiplier: z.exactOptional(ratio),
      intakeLoss: z.exactOptional(ratio),
    }),
  ),
});

const targetSchema = z.strictObject({
  id: text,
  zone: text,
  quantity: z.enum(['change from baseline', 'zone minus outdoors']),
  limitPa: pressurePa,
  side: z.enum(['not below', 'not above']),
});

/** In SI by the dimension: m², m, m³/s or a share. */
const size = z.number();

const margins = z.array(
  z.strictObject({
    target: targetSchema,
    marginPa: pressurePa,
    valuePa: pressurePa,
    situation: worstPressureSchema,
  }),
);

const knownHead = {
  question: z.literal('size'),
  remedy: text,
  tried: z.array(
    z.strictObject({ size, holds: z.boolean(), leastMarginPa: pressurePa.nullable() }),
  ),
  solves: count,
  margins,
};
const sizingHead = { ...knownHead, monotone: z.boolean() };

const judgedSizeSchema = z.strictObject({ size, margins, proved: z.boolean() });

const unfinishedSchema = z.strictObject({
  ...knownHead,
  status: z.literal('unfinished'),
  fails: z.exactOptional(judgedSizeSchema),
  holds: z.exactOptional(judgedSizeSchema),
});

const sizingResultSchema = z.union([
  z.strictObject({ ...sizingHead, status: z.literal('nothing needed') }),
  z.strictObject({
    ...sizingHead,
    status: z.literal('sized'),
    size,
    failsAt: z.exactOptional(size),
    proved: z.boolean(),
  }),
  z.strictObject({
    ...sizingHead,
    status: z.literal('impossible'),
    best: size,
    obstacle: obstacleSchema,
  }),
]);

const house = z.strictObject({ name: text, digest: text });

/** A sizing with its type as inferred, so that a test can compare it with the declared one. */
export const sizingObjectSchema = z.strictObject({
  schema: z.literal('evendraft-sizing'),
  schemaVersion: z.literal(1),
  libraryVersion: text,
  house,
  incomplete: z.exactOptional(incompleteSchema),
  limitSet: z.exactOptional(text),
  remedy: z.strictObject({
    kind: kindSchema,
    what: text,
    dimension: dimensionSchema,
    wanted: z.enum(['smallest', 'largest']),
    assumptions: z.array(assumptionSchema),
    built: z.exactOptional(builtSchema),
  }),
  targets: z.array(targetSchema),
  withoutLimit: z.array(text),
  result: z.union([sizingResultSchema, unfinishedSchema]),
});

const energy = z.number().meta({ unit: 'kWh' });
const power = z.number().meta({ unit: 'W' });
const yearlyHeat = { heatingKWh: energy, coolingKWh: energy };

const yearSchema = z.strictObject({
  totalKWh: energy,
  fanKWh: energy,
  byHours: z.exactOptional(
    z.strictObject({
      question: z.literal('air of a year'),
      ...yearlyHeat,
      inducedKgPerS: z.number().meta({ unit: 'kg/s' }),
      hours: count,
      weathersSolved: count,
      alikeWithin: z.strictObject({
        temperatureK: z.number().meta({ unit: 'K' }),
        windMPerS: z.number().meta({ unit: 'm/s' }),
        windDeg: z.number().meta({ unit: 'deg' }),
        pressurePa,
      }),
      unsolvedHours: count,
      taken: z.array(
        z.enum(['still air', 'wind from the front', 'standard pressure at the altitude']),
      ),
    }),
  ),
  byDegreeDays: z.strictObject(yearlyHeat),
});

const rowSchema = z.strictObject({
  kind: kindSchema,
  remedy: text,
  dimension: dimensionSchema,
  built: z.exactOptional(builtSchema),
  sizing: sizingResultSchema,
  situation: text,
  exhaustCurve: z.exactOptional(exhaustCurveSchema),
  exhaustFlowM3PerS: z.exactOptional(volumeFlowM3PerS),
  faceVelocityMPerS: z.exactOptional(z.number().meta({ unit: 'm/s' })),
  guidance: z.array(ruleFindingSchema),
  highest: z.exactOptional(extremeSchema),
  failures: z.array(failureSchema),
  closedDamper: z.exactOptional(closedDamperSchema),
  inducedHeatW: z.exactOptional(power),
  temperingW: z.exactOptional(power),
  year: z.exactOptional(yearSchema),
  upkeep: z.array(text),
  code: z.array(
    z.strictObject({
      rule: text,
      standing: z.enum(['satisfied', 'not satisfied', 'local code decides']),
      why: text,
      source: sourceSchema,
    }),
  ),
  assumptions: z.array(assumptionSchema),
});

/** A comparison with its type as inferred, so that a test can compare it with the declared one. */
export const comparisonObjectSchema = z.strictObject({
  schema: z.literal('evendraft-comparison'),
  schemaVersion: z.literal(2),
  libraryVersion: text,
  house,
  leftOut: z.array(text),
  incomplete: z.exactOptional(incompleteSchema),
  comparison: z.strictObject({
    question: z.literal('compare'),
    limitSet: text,
    rows: z.array(rowSchema),
    rank: z.array(
      z.strictObject({
        by: z.enum([
          'keeps the limits',
          'code rules not satisfied',
          'heat',
          'energy of a year',
          'least margin',
          'face velocity',
          'hood flow',
          'things to look after',
        ]),
        better: z.enum(['more', 'less']),
        step: z.number(),
      }),
    ),
    asItIs: z.exactOptional(exhaustCurveSchema),
    withoutLimit: z.array(text),
    stopped: z.exactOptional(stoppedSchema),
  }),
});
