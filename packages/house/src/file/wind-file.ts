import type { ShelterClass, Terrain } from '@evendraft/airflow';
import * as z from 'zod';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { themselves, word } from './schema/word.js';
import { ranges } from './ranges.js';

/** Words for the five shelter classes; the class's number may be typed too. */
const shelterWords = {
  none: 'none',
  'isolated house': 'isolated house',
  'buildings across the street': 'buildings across the street',
  'larger lots': 'larger lots',
  'close neighbours': 'close neighbours',
  1: 'none',
  2: 'isolated house',
  3: 'buildings across the street',
  4: 'larger lots',
  5: 'close neighbours',
} as const;

/** The class that a word stands for. */
export const shelterClassOf: Readonly<
  Record<(typeof shelterWords)[keyof typeof shelterWords], ShelterClass>
> = {
  none: 1,
  'isolated house': 2,
  'buildings across the street': 3,
  'larger lots': 4,
  'close neighbours': 5,
};

const terrainWords = themselves([
  'city centre',
  'suburban',
  'open',
  'flat',
] as const satisfies readonly Terrain[]);

const terrain = (whose: string): z.ZodType<Terrain> =>
  word(
    terrainWords,
    `What lies upwind of the ${whose}: city centre, suburban or wooded, open country, flat land or water.`,
  );

/** How the wind meets the house, for weathers whose wind was measured at a station. */
export const windFile = part(
  {
    terrain: z.optional(terrain('house')),
    shelter: z.optional(
      word(shelterWords, 'What keeps the wind off the house: a class of shelter, 1 to 5.'),
    ),
    walls: z.optional(
      word(
        themselves(['correlation', 'low-rise table']),
        'Pressure coefficients of walls: the correlation for unsheltered walls, slowed by the shelter, or the table of low buildings, whose columns hold the shelter.',
      ),
    ),
    roofPitch: z.optional(
      quantity('angle', {
        description:
          'Pitch of the roof; openings and ceiling leaks to the roof then meet the wind of both its slopes.',
        allowed: ranges.roofPitch,
        examples: ['25 deg', '5 deg'],
      }),
    ),
    outlets: z.optional(
      word(
        themselves(['clear of the roof', 'not clear of the roof']),
        'How flues and fans that end at the roof stand in the wind.',
      ),
    ),
    eaveHeight: z.optional(
      quantity('length', {
        description:
          'Height of the eaves above ground; that of the highest living zone when absent.',
        allowed: ranges.eaveHeight,
        examples: ['18 ft', '5.5 m'],
      }),
    ),
    station: z.optional(
      part(
        {
          terrain: z.optional(terrain('weather station')),
          height: z.optional(
            quantity('length', {
              description: 'Height of the wind gauge above ground; 10 m (33 ft) when absent.',
              allowed: ranges.stationHeight,
              examples: ['10 m', '33 ft'],
            }),
          ),
        },
        { description: 'Where the wind is measured.', example: '{ terrain: open, height: 10 m }' },
      ),
    ),
  },
  {
    description:
      'What lies around the house, and by which coefficients the wind presses on it; with it the wind of a weather is that of a weather station.',
    example: '{ terrain: suburban, shelter: buildings across the street }',
  },
);
