import { ruleRegions } from '@evendraft/rules';
import { dimensions, type Dimension } from '@evendraft/units';
import * as z from 'zod';
import { sourceSchema, text, verdictSchema } from './shared-schemas.js';

const dimensionNames = Object.keys(dimensions) as [Dimension, ...Dimension[]];

/** One rule held against one thing of the house. */
export const ruleFindingSchema = z
  .strictObject({
    rule: text,
    title: text,
    region: z.enum(ruleRegions),
    source: sourceSchema,
    subject: z.exactOptional(text),
    applies: z.enum(['yes', 'no', 'unknown']),
    why: text,
    arithmetic: z.array(
      z.strictObject({
        label: text,
        expression: text,
        value: z.union([
          z.strictObject({
            si: z.number().meta({ description: 'In the SI unit of its dimension.' }),
            dimension: z.enum(dimensionNames),
          }),
          text,
        ]),
      }),
    ),
    verdict: verdictSchema,
    reason: z.exactOptional(text),
    satisfiedBy: z.array(text),
    give: z.array(text),
    notes: z.array(text),
  })
  .meta({ id: 'ruleFinding' });
