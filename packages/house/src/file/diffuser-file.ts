import * as z from 'zod';
import { flag } from './schema/flag.js';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { themselves, word } from './schema/word.js';
import { ranges } from './ranges.js';
import { diffuserKinds } from '../diffuser.js';

/** What make-up air needs so that its velocity can be judged. */
export const diffuserShape = {
  faceArea: z.optional(
    quantity('area', {
      description: 'Area through which its air enters the room, for the face velocity.',
      allowed: ranges.openingArea,
      examples: ['240 in2', '0.15 m2'],
    }),
  ),
  diffuser: z.optional(
    part(
      {
        kind: z.optional(word(themselves(diffuserKinds), 'What its air comes out of.')),
        distanceToHood: z.optional(
          quantity('length', {
            description: 'From its face to the nearest edge of the hood.',
            allowed: ranges.height,
            examples: ['8 ft', '2.5 m'],
          }),
        ),
        directedAway: z.optional(flag('Whether it blows away from the hood.')),
        airTemperature: z.optional(
          quantity('temperature', {
            description: 'Air as it leaves it, where it is tempered; that of outdoors when absent.',
            allowed: ranges.temperature,
            examples: ['50 F', '12 C'],
          }),
        ),
      },
      {
        description: 'Where its air comes out in the room, for findings on velocity.',
        example: '{ kind: grille, distanceToHood: 8 ft, directedAway: true }',
      },
    ),
  ),
};
