import { deviceKinds } from '@evendraft/house';
import * as z from 'zod';
import { testBaselines, testedDoors, testedExhausts, testFirings } from '../test-configuration.js';
import { applies, id, quantity, source, suction, text } from './limit-parts.js';

const note = z.exactOptional(text);
const ppm = z.number().nonnegative().max(10000).meta({ unit: 'ppm' });
const flow = z.number().nonnegative().max(10).meta({ unit: 'm3/s' });

const testConfiguration = z.strictObject({
  id,
  words: text,
  exhaust: z.enum(testedExhausts),
  largerThanM3PerS: z.exactOptional(flow),
  without: z.exactOptional(z.array(z.enum(deviceKinds)).min(1)),
  doors: z.enum(testedDoors),
  hearthDamper: z.enum(['closed', 'not stated']),
  airHandler: z.enum(['off', 'where it lowers the zone', 'not stated']),
  firing: z.enum(testFirings),
  baseline: z.enum(testBaselines),
  source,
});

const houseLimit = z.strictObject({
  id,
  condition: text,
  limitPa: suction,
  quantity,
  ifAnyOf: z.exactOptional(applies),
  ifNoneOf: z.exactOptional(applies),
  configuration: z.exactOptional(id),
  source,
  note,
});

const extractLimit = z.strictObject({
  id,
  condition: text,
  applies,
  sameRoom: z.boolean(),
  largestFlowM3PerS: flow,
  source,
  note,
});

const corners = z
  .array(
    z.strictObject({
      outdoorTemperatureC: z.number().min(-90).max(60).meta({ unit: 'C' }),
      draftPa: suction,
    }),
  )
  .min(1)
  .check((context) => {
    context.value.forEach((corner, index) => {
      const before = context.value[index - 1];
      if (before === undefined || before.outdoorTemperatureC < corner.outdoorTemperatureC) return;
      const parameters = { found: corner.outdoorTemperatureC, before: before.outdoorTemperatureC };
      context.issues.push({
        code: 'custom',
        input: context.value,
        path: [index, 'outdoorTemperatureC'],
        params: { kind: 'order', parameters },
      });
    });
  });

const draftLimit = z.strictObject({
  id,
  condition: text,
  applies,
  place: text,
  corners,
  strongestPa: z.exactOptional(suction),
  source,
  note,
});

const spillageTime = z.strictObject({
  id,
  condition: text,
  vent: z.enum(['cold', 'warm', 'either']),
  limitS: z.number().nonnegative().max(3600).meta({ unit: 's' }),
  source,
  note,
});

const ambientCo = z
  .array(z.strictObject({ id, fromPpm: ppm, action: text, leave: z.boolean(), source, note }))
  .min(1)
  .check((context) => {
    context.value.forEach((level, index) => {
      const before = context.value[index - 1];
      if (before === undefined || before.fromPpm < level.fromPpm) return;
      const parameters = { found: level.fromPpm, before: before.fromPpm };
      context.issues.push({
        code: 'custom',
        input: context.value,
        path: [index, 'fromPpm'],
        params: { kind: 'order', parameters },
      });
    });
  });

const flueCo = z.strictObject({
  id,
  condition: text,
  applies: z.exactOptional(applies),
  limitPpm: ppm,
  basis: z.enum(['air-free', 'as measured']),
  source,
  note,
});

/** The lists of a limit set that go beyond limits by appliance, each optional and never empty. */
export const furtherLimits = {
  testConfigurations: z.exactOptional(z.array(testConfiguration).min(1)),
  houseLimits: z.exactOptional(z.array(houseLimit).min(1)),
  extractLimits: z.exactOptional(z.array(extractLimit).min(1)),
  draftLimits: z.exactOptional(z.array(draftLimit).min(1)),
  spillageTimes: z.exactOptional(z.array(spillageTime).min(1)),
  ambientCo: z.exactOptional(ambientCo),
  flueCo: z.exactOptional(z.array(flueCo).min(1)),
};
