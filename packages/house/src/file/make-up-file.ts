import * as z from 'zod';
import { measuredLeak } from './schema/measured-leak.js';
import { part } from './schema/part.js';
import { interlockFile } from './interlock-file.js';
import { heightInZone, zoneName } from './opening-file.js';
import { openingLawShape } from './opening-law.js';
import { outletFile } from './outlet-file.js';
import { preparationFile } from './preparation-file.js';

/** Leakage through a closed damper. */
export const closedLeakage = measuredLeak(['flow', 'area'], {
  description: 'Leakage through the closed damper.',
  examples: ['5 cm2 at 4 Pa', '3 cfm at 50 Pa'],
});

/** A make-up air opening behind a damper that opens with its driver. */
export const makeUpFile = part(
  {
    zone: z.optional(zoneName),
    to: z.optional(outletFile),
    height: z.optional(heightInZone),
    opensWith: interlockFile,
    closedLeakage: z.optional(closedLeakage),
    duringTest: z.optional(preparationFile),
    ...openingLawShape,
  },
  {
    description: 'A make-up air opening behind a damper that opens with its driver.',
    example: '{ opensWith: hood, diameter: 8 in, to: back }',
  },
);
