import * as z from 'zod';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { ranges } from './ranges.js';

/** A neighbour, a corridor, a shaft: what lies beyond the house with a pressure and a temperature of its own. */
export const surroundingFile = part(
  {
    temperature: z.optional(
      quantity('temperature', {
        description: 'Its air temperature; as indoors when absent.',
        allowed: ranges.temperature,
      }),
    ),
    pressure: z.optional(
      quantity('pressure', {
        description: 'Its pressure minus undisturbed outdoors; 0 Pa when absent.',
        allowed: ranges.pressure,
        examples: ['0 Pa', '3 Pa', '-2 Pa'],
      }),
    ),
  },
  {
    description: 'A space beyond the house whose pressure and temperature are given.',
    example: '{ temperature: 68 F, pressure: 0 Pa }',
  },
);
