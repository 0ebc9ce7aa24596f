import * as z from 'zod';
import { findingSchema } from './finding-schema.js';
import { ruleFindingSchema } from './rule-finding-schema.js';
import { text } from './shared-schemas.js';

/** What a house was found to be by one limit set, key by key. */
export const judgedSetShape = {
  limitSet: z.strictObject({
    id: text,
    name: text,
    edition: text.meta({ description: "Edition of this project's data for the set." }),
  }),
  findings: z.array(findingSchema),
  houseFindings: z.array(ruleFindingSchema),
  programmeTest: z.exactOptional(
    z.strictObject({
      states: z.array(
        z.strictObject({ configuration: text, label: text, notModelled: z.array(text) }),
      ),
      findings: z.array(findingSchema),
      houseFindings: z.array(ruleFindingSchema),
    }),
  ),
};
