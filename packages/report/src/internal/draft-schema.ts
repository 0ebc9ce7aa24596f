import * as z from 'zod';
import { ruleFindingSchema } from './rule-finding-schema.js';
import { count, pressurePa, text } from './shared-schemas.js';

/** What a flue does in the least favourable situation. */
export const draftVerdictSchema = z.enum([
  'drafts from cold',
  'drafts only once warm',
  'spills in part',
  'reversed',
]);
const share = z.number().meta({ unit: '-' });
const ppm = z.number().meta({ unit: 'ppm' });
const timeS = z.number().meta({ unit: 's' });
const names = { label: text, weather: text, airtightness: text };
const situation = { ...names, firing: z.record(text, text) };

const threshold = z.strictObject({
  roomPa: pressurePa,
  houseGivesPa: pressurePa,
  massFlowKgPerS: z.number().meta({ unit: 'kg/s' }),
});

const worstSchema = z.strictObject({
  ...situation,
  verdict: draftVerdictSchema,
  heldByFan: z.boolean(),
  tapDraftPa: pressurePa,
  spilledShare: z.strictObject({ fromCold: share, fromWarm: share }),
  thresholds: z.exactOptional(
    z.strictObject({ coldEstablishes: threshold, hotSpills: threshold, hotReverses: threshold }),
  ),
});

const spilledSchema = z.strictObject({
  ...situation,
  carbonMonoxideAirFreePpm: ppm,
  timesS: z.array(timeS),
  zones: z.array(
    z.strictObject({
      zone: text,
      carbonMonoxidePpm: ppm.nullable(),
      carbonDioxidePpm: ppm.nullable(),
      waterVapourKgPerKg: z.number().meta({ unit: 'kg/kg' }).nullable(),
      carbonMonoxideCoursePpm: z.array(ppm),
    }),
  ),
});

/** Draft, spillage time or carbon monoxide of one appliance against a limit. */
export const combustionFindingSchema = z
  .strictObject({
    appliance: text,
    about: z.enum(['draft', 'spillage time', 'carbon monoxide']),
    situation: z.strictObject(situation),
    finding: ruleFindingSchema,
    found: z
      .number()
      .nullable()
      .meta({ description: 'Draft in Pa, spillage time in s, carbon monoxide in ppm.' }),
  })
  .meta({ id: 'combustionFinding' });

const applianceSchema = z.strictObject({
  appliance: text,
  zone: text,
  worst: z.exactOptional(worstSchema),
  verdicts: z.array(z.strictObject({ verdict: draftVerdictSchema, situations: count })),
  spillsWithNothingRunning: z.boolean(),
  unjudged: z.array(z.strictObject({ reason: text, situations: count })),
  starts: z.array(
    z.strictObject({
      start: z.enum(['cold', 'warm']),
      spillageS: timeS.nullable(),
      settled: z.boolean(),
      followedS: timeS,
    }),
  ),
  spilled: z.exactOptional(spilledSchema),
  byTemperature: z.array(
    z.strictObject({
      what: z.enum(['nothing running', 'least favourable']),
      rows: z.array(
        z.strictObject({
          outdoorTemperatureC: z.number().meta({ unit: 'C' }),
          hotPa: pressurePa.nullable(),
          fromColdPa: pressurePa.nullable(),
          coldPa: pressurePa.nullable(),
        }),
      ),
    }),
  ),
  findings: z.array(combustionFindingSchema),
});

/** Whether flues draw, spill or run backwards. */
export const draftResultsSchema = z.union([
  z.strictObject({ status: z.literal('not solved'), why: text }),
  z.strictObject({
    status: z.literal('solved'),
    situations: count,
    limitSets: z.array(z.strictObject({ id: text, name: text, edition: text })),
    appliances: z.array(applianceSchema),
    notStudied: z.array(z.strictObject({ appliance: text, reason: text })),
  }),
]);
