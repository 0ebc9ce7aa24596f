import * as z from 'zod';
import { furtherLimits } from './internal/further-limits-schema.js';
import { applies, id, quantity, source, suction, text } from './internal/limit-parts.js';
import type { LimitSet } from './limit-set.js';
import { ruleRegions } from './rule-finding.js';

const limit = z.strictObject({
  id,
  condition: text,
  limitPa: suction,
  quantity,
  applies,
  source,
  note: z.exactOptional(text),
});

const exclusion = z.strictObject({ id, applies, reason: text, source });

/**
 * Shape of a limit set, for sets that come from a file.
 *
 * Strict: an unknown key is an issue. A set limits something, if only the time of spillage or carbon
 * monoxide. A height range is not empty, a row does not ask for a vent that is shared and not shared,
 * corners and levels rise. A limit of suction is from −100 Pa to below zero; the floor is our choice,
 * twice the lowest one of our own sets, against a number in another unit. That ids are unique, and
 * that a house limit names a configuration of its set, is left to {@link readLimitSet}, which finds it
 * out even where the shape is wrong.
 */
export const limitSetSchema: z.ZodType<LimitSet> = z
  .strictObject({
    evendraftLimits: z.literal(1),
    id,
    name: text,
    edition: z.string().regex(/^\d{4}-(0[1-9]|1[0-2])$/),
    document: text,
    editionOfDocument: text,
    region: z.exactOptional(z.enum(ruleRegions)),
    summary: text,
    note: z.string().trim().default(''),
    testSetUp: text,
    limits: z.array(limit),
    exclusions: z.array(exclusion).default([]),
    ...furtherLimits,
  })
  .check((context) => {
    const { limits, houseLimits, extractLimits, draftLimits, spillageTimes, ambientCo, flueCo } =
      context.value;
    const others = [houseLimits, extractLimits, draftLimits, spillageTimes, ambientCo, flueCo];
    if (limits.length > 0 || others.some((list) => list !== undefined)) return;
    const params = { kind: 'empty', parameters: { found: 'the list' } };
    context.issues.push({ code: 'custom', input: limits, path: ['limits'], params });
  });
