import * as z from 'zod';
import { itemName } from './schema/item-name.js';
import { part } from './schema/part.js';
import { closedLeakage } from './closed-leakage.js';
import { damperFile } from './damper-file.js';
import { diffuserShape } from './diffuser-file.js';
import { ductFile } from './duct-file.js';
import { interlockFile } from './interlock-file.js';
import { heightInZone, zoneName } from './opening-file.js';
import { openingLawShape } from './opening-law.js';
import { outletFile } from './outlet-file.js';
import { preparationFile } from './preparation-file.js';

/** A make-up air opening behind a damper that opens with its driver. */
export const makeUpFile = part(
  {
    zone: z.optional(zoneName),
    to: z.optional(outletFile),
    height: z.optional(heightInZone),
    opensWith: interlockFile,
    closedLeakage: z.optional(closedLeakage),
    duringTest: z.optional(preparationFile),
    duct: z.optional(ductFile),
    damper: z.optional(damperFile),
    throughHood: z.optional(
      itemName('Hood beside whose exhaust its air comes out of a plenum.', ['hood']),
    ),
    ...diffuserShape,
    ...openingLawShape,
  },
  {
    description: 'A make-up air opening behind a damper that opens with its driver.',
    example: '{ opensWith: hood, diameter: 8 in, to: back }',
  },
);
