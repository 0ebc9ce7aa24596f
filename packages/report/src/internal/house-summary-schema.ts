import { applianceKinds, deviceKinds, ventTypes, zoneKinds } from '@evendraft/house';
import * as z from 'zod';
import { pressurePa, text, volumeFlowM3PerS } from './shared-schemas.js';

const weatherSchema = z.strictObject({
  name: text,
  origin: text,
  outdoorTemperatureC: z.number().meta({ unit: 'C' }),
  windSpeedMPerS: z.number().meta({ unit: 'm/s' }),
  windFromDeg: z.number().meta({ unit: 'deg' }),
});

const airtightnessSchema = z.strictObject({
  origin: text,
  exponent: z.number().meta({ unit: '-' }),
  cases: z.array(
    z.strictObject({
      name: z.enum(['tested', 'tight end', 'loose end', 'planned']),
      volumeFlowM3PerS,
      pressurePa,
    }),
  ),
  guarded: z.boolean(),
  direction: z.enum(['depressurized', 'pressurized', 'both', 'not stated']),
});

/** What a report repeats of the house itself. */
export const houseSummarySchema = z.strictObject({
  name: text,
  floorAreaM2: z.number().meta({ unit: 'm2' }),
  volumeM3: z.number().meta({ unit: 'm3' }),
  altitudeM: z.number().meta({ unit: 'm' }),
  digest: text,
  airtightness: airtightnessSchema,
  testPreparation: z.exactOptional(
    z.array(z.strictObject({ item: text, duringTest: z.enum(['sealed', 'closed', 'open']) })),
  ),
  zones: z.array(
    z.strictObject({
      id: text,
      kind: z.enum(zoneKinds),
    }),
  ),
  devices: z.array(
    z.strictObject({
      id: text,
      kind: z.enum(deviceKinds),
      direction: z.enum(['exhaust', 'supply']),
      zone: text,
    }),
  ),
  appliances: z.array(
    z.strictObject({
      id: text,
      kind: z.enum(applianceKinds),
      vent: z.enum(ventTypes),
      zone: text,
    }),
  ),
  weathers: z.array(weatherSchema),
});
