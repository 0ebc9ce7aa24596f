import * as z from 'zod';
import { ruleFindingSchema } from './rule-finding-schema.js';
import { count, pressurePa, text, volumeFlowM3PerS } from './shared-schemas.js';

const leakageClasses = [
  'AMCA 1A',
  'AMCA 1',
  'AMCA 2',
  'AMCA 3',
  'EN 1751 class 1',
  'EN 1751 class 2',
  'EN 1751 class 3',
  'EN 1751 class 4',
] as const;

const flowAnswerSchema = z.union([
  z.strictObject({
    status: z.literal('found'),
    flowM3PerS: volumeFlowM3PerS,
    failsAtM3PerS: z.exactOptional(volumeFlowM3PerS),
    marginPa: pressurePa,
    situation: text,
    proved: z.boolean(),
    monotone: z.boolean(),
  }),
  z.strictObject({
    status: z.literal('none'),
    leastM3PerS: volumeFlowM3PerS,
    mostM3PerS: volumeFlowM3PerS,
  }),
]);

const sets = z.array(z.array(text));

const howFarSchema = z.strictObject({
  question: z.literal('how far'),
  limitSet: text,
  airtightness: z.array(z.strictObject({ appliance: text, answer: flowAnswerSchema })),
  largestExhaust: z.exactOptional(z.strictObject({ device: text, answer: flowAnswerSchema })),
  together: z.exactOptional(
    z.strictObject({
      question: z.literal('what may run together'),
      devices: z.array(text),
      largestThatKeep: sets,
      smallestThatBreak: sets,
      solves: count,
    }),
  ),
  withoutLimit: z.array(text),
});

const dryerSchema = z.strictObject({
  question: z.literal('dryer'),
  dryer: text,
  rows: z.array(
    z.strictObject({
      arrangement: z.enum([
        'as it is',
        'with its own make-up duct',
        'condensing or heat-pump dryer',
        'closet, door shut, no opening',
        'closet, door shut, 100 in² opening',
        'closet, louvred door shut',
      ]),
      zone: text,
      deliveredFlowM3PerS: volumeFlowM3PerS,
      alonePa: pressurePa,
      weather: text,
      lowestPa: pressurePa,
      doorPa: pressurePa,
      doorForceN: z.number().meta({ unit: 'N' }),
      proved: z.boolean(),
    }),
  ),
  notSolved: z.array(text),
});

/** How far a pressure goes one way. */
export const extremeSchema = z.strictObject({ zone: text, pressurePa, situation: text });

/** The house with one thing failed. */
export const failureSchema = z.strictObject({
  item: z.exactOptional(text),
  failure: z.enum([
    'as it is',
    'damper stuck shut',
    'damper stuck open',
    'gasket leaking',
    'filter clogged',
    'fan failed',
    'door left open',
  ]),
  lowest: extremeSchema,
  highest: extremeSchema,
  infiltrationKgPerS: z.exactOptional(z.number().meta({ unit: 'kg/s' })),
  proved: z.boolean(),
});

const inTest = {
  flowAt50PaM3PerS: volumeFlowM3PerS,
  shareOfTested: z.number().meta({ unit: '-' }),
};

/** What a closed damper adds to an airtightness test. */
export const closedDamperSchema = z.strictObject({
  item: text,
  areaM2: z.exactOptional(z.number().meta({ unit: 'm2' })),
  stated: z.exactOptional(z.strictObject(inTest)),
  byClass: z.array(z.strictObject({ ...inTest, leakageClass: z.enum(leakageClasses) })),
});

/** The air of the house beside its appliances. */
export const airResultsSchema = z.union([
  z.strictObject({ status: z.literal('not solved'), why: text }),
  z.strictObject({
    status: z.literal('solved'),
    guidance: z.array(ruleFindingSchema),
    howFar: howFarSchema,
    dryers: z.array(dryerSchema),
    failures: z.array(failureSchema),
    closedDampers: z.array(closedDamperSchema),
  }),
]);
