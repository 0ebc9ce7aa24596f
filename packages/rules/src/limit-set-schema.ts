import { applianceKinds, sourceStatuses, ventTypes } from '@evendraft/house';
import * as z from 'zod';
import type { LimitSet } from './limit-set.js';

const text = z.string().trim().min(1);
const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

const kinds = z.array(z.enum(applianceKinds)).min(1);
const vents = z.array(z.enum(ventTypes).exclude(['unvented', 'electric'])).min(1);

const source = z.strictObject({
  document: text,
  edition: z.exactOptional(text),
  section: z.exactOptional(text),
  status: z.enum(sourceStatuses),
});

const chimney = z
  .strictObject({
    fromHeightM: z.exactOptional(z.number().nonnegative().meta({ unit: 'm' })),
    belowHeightM: z.exactOptional(z.number().nonnegative().meta({ unit: 'm' })),
    exterior: z.exactOptional(z.boolean()),
  })
  .check((context) => {
    const { fromHeightM = 0, belowHeightM = Infinity } = context.value;
    if (fromHeightM < belowHeightM) return;
    const parameters = { from: fromHeightM, below: belowHeightM };
    const params = { code: 'limits.height-range', parameters };
    context.issues.push({ code: 'custom', input: context.value, path: ['belowHeightM'], params });
  });

const appliesTo = z
  .strictObject({
    kinds: z.exactOptional(kinds),
    vents: z.exactOptional(vents),
    fuels: z.exactOptional(z.array(z.enum(['gas', 'oil', 'wood', 'pellets'])).min(1)),
    alone: z.exactOptional(z.literal(true)),
    sharesVentWith: z.exactOptional(
      z.strictObject({
        kinds: z.exactOptional(kinds),
        vents: z.exactOptional(vents),
        ventDamper: z.exactOptional(z.boolean()),
      }),
    ),
    ventDamper: z.exactOptional(z.boolean()),
    chimney: z.exactOptional(chimney),
  })
  .check((context) => {
    if (context.value.alone === undefined || context.value.sharesVentWith === undefined) return;
    const params = { code: 'limits.alone-and-shared', parameters: {} };
    context.issues.push({ code: 'custom', input: context.value, path: ['alone'], params });
  });
const applies = z.array(appliesTo).min(1);

const limit = z.strictObject({
  id,
  condition: text,
  limitPa: z.number().negative().min(-100).meta({ unit: 'Pa' }),
  quantity: z.enum(['change from baseline', 'zone minus outdoors']),
  applies,
  source,
  note: z.exactOptional(text),
});

const exclusion = z.strictObject({ id, applies, reason: text, source });

/**
 * Shape of a limit set, for sets that come from a file.
 *
 * Strict: an unknown key is an issue. A height range is not empty, a row does not ask for a vent that
 * is shared and not shared. A limit is from −100 Pa to below zero; the floor is our choice, twice the
 * lowest one of our own sets, against a number in another unit. That ids are unique is left to
 * {@link readLimitSet}, which finds it out even where the shape is wrong.
 */
export const limitSetSchema: z.ZodType<LimitSet> = z.strictObject({
  evendraftLimits: z.literal(1),
  id,
  name: text,
  edition: z.string().regex(/^\d{4}-(0[1-9]|1[0-2])$/),
  document: text,
  editionOfDocument: text,
  summary: text,
  note: z.string().trim().default(''),
  testSetUp: text,
  limits: z.array(limit).min(1),
  exclusions: z.array(exclusion).default([]),
});
