import * as z from 'zod';
import { kindNames, distinctKinds } from '../kind-names.js';
import { accept } from './schema/file-problem.js';
import { leaf } from './schema/leaf.js';
import { part } from './schema/part.js';
import { quantity, readQuantity } from './schema/quantity.js';
import { themselves, word } from './schema/word.js';
import { leakageFile } from './leakage-file.js';
import { ranges } from './ranges.js';

const temperatureExamples = ['70 F', '21 C', 'outdoors'];

/** A room, a floor or a buffer space. */
export const zoneFile = part(
  {
    kind: z.optional(
      word(
        themselves(distinctKinds(kindNames.zones)),
        'What the zone is; may be left out where its name says it. Attic, garage, crawl space and shaft are outside the tested envelope.',
      ),
    ),
    floorHeight: z.optional(
      quantity('length', {
        description: 'Height of its floor above the lowest living floor; negative below it.',
        allowed: ranges.floorHeight,
        examples: ['0 ft', '9 ft', '-7 ft 6 in', '2.7 m'],
      }),
    ),
    height: z.optional(
      quantity('length', { description: 'Floor to ceiling.', allowed: ranges.height }),
    ),
    area: z.optional(quantity('area', { description: 'Floor area.', allowed: ranges.floorArea })),
    volume: z.optional(
      quantity('volume', {
        description: 'Volume; from area and height when absent.',
        allowed: ranges.volume,
      }),
    ),
    temperature: z.optional(
      leaf<number | 'outdoors'>(
        {
          description: 'Air temperature, or `outdoors` where it follows the weather.',
          examples: temperatureExamples,
          jsonSchema: { type: 'string', unit: 'temperature' },
        },
        (value) =>
          typeof value === 'string' && value.trim().toLowerCase() === 'outdoors'
            ? accept('outdoors' as const)
            : readQuantity(value, {
                dimension: 'temperature',
                allowed: ranges.temperature,
                examples: temperatureExamples,
              }),
      ),
    ),
    leakage: z.optional(leakageFile),
  },
  {
    description: 'A room, a floor or a buffer space with one pressure and one temperature.',
    example: '{ kind: living, area: 1200 ft2, height: 8.5 ft, temperature: 70 F }',
  },
);

/** What {@link zoneFile} reads. */
export type ZoneInFile = z.output<typeof zoneFile>;
