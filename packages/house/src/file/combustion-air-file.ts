import * as z from 'zod';
import { branch } from './schema/branch.js';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { damperFile } from './damper-file.js';
import { ductFile } from './duct-file.js';
import { endHeight, heightInZone, zoneName } from './opening-file.js';
import { openingLawShape } from './opening-law.js';
import { outletFile } from './outlet-file.js';
import { preparationFile } from './preparation-file.js';
import { ranges } from './ranges.js';

const openingExamples = ['100 in2', '{ diameter: 6 in, to: attic, endHeight: 9 ft }'];

const oneOpening = (where: string) =>
  branch(
    {
      text: quantity('area', {
        description: 'Net free area.',
        allowed: ranges.openingArea,
        examples: ['100 in2', '650 cm2'],
      }),
      map: part(
        {
          to: z.optional(outletFile),
          height: z.optional(heightInZone),
          endHeight: z.optional(endHeight),
          duct: z.optional(ductFile),
          damper: z.optional(damperFile),
          ...openingLawShape,
        },
        {
          description:
            'The opening in full; a vertical duct that leads from it has its other end at another height.',
          example: '{ netFreeArea: 100 in2, height: 7 ft }',
        },
      ),
    },
    { description: `${where} By its net free area, or in full.`, examples: openingExamples },
  );

/** Openings that bring combustion air to the zone of an appliance. */
export const combustionAirFile = part(
  {
    zone: z.optional(zoneName),
    to: z.optional(outletFile),
    high: z.optional(oneOpening('The opening near the ceiling, or the only one.')),
    low: z.optional(oneOpening('The opening near the floor.')),
    duringTest: z.optional(preparationFile),
  },
  {
    description:
      'Openings that bring combustion air to a zone: one near the ceiling, one near the floor, or both; to outdoors, an attic, a crawl space or another room.',
    example: '{ zone: closet, to: attic, high: 100 in2, low: { diameter: 6 in, endHeight: 9 ft } }',
  },
);

/** What {@link combustionAirFile} reads. */
export type CombustionAirInFile = z.output<typeof combustionAirFile>;
