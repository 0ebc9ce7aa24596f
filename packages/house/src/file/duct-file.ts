import { ductRoughnesses, terminalOpenings, type DuctMaterial } from '@evendraft/airflow';
import * as z from 'zod';
import { branch } from './schema/branch.js';
import { named } from './schema/named.js';
import { part } from './schema/part.js';
import { plainNumber } from './schema/plain-number.js';
import { quantity } from './schema/quantity.js';
import { themselves, word } from './schema/word.js';
import { twoSides } from './duct-size-file.js';
import { ranges } from './ranges.js';

/** Schema of a loss coefficient by the velocity pressure of the duct. */
const loss = (description: string) => plainNumber(ranges.lossCoefficient, description, [1.2, 0.5]);

const count = plainNumber(ranges.fittingCount, 'How many of them.', [2]);

const fitting = branch(
  {
    text: count,
    map: part(
      {
        count: z.optional(count),
        loss: z.optional(loss('Loss coefficient of one, by the velocity pressure of the duct.')),
        equivalentLength: z.optional(
          quantity('length', {
            description: 'Length of the same duct that loses as much as one.',
            allowed: ranges.ductLength,
            examples: ['10 ft', '3 m'],
          }),
        ),
      },
      { description: 'A fitting with its own loss.', example: '{ count: 2, loss: 1.2 }' },
    ),
  },
  {
    description: 'How many, or how many with their own loss or equivalent length.',
    examples: ['3', '{ count: 2, loss: 1.2 }', '{ equivalentLength: 10 ft }'],
  },
);

const ownOpening = (description: string) =>
  part(
    {
      loss: z.optional(loss('Its loss coefficient, by the velocity pressure of the duct.')),
      freeArea: z.optional(
        quantity('area', {
          description: 'Its free area.',
          allowed: ranges.openingArea,
          examples: ['60 in2', '400 cm2'],
        }),
      ),
      freeShare: z.optional(
        quantity('ratio', {
          description: 'Its free area by the area of the duct.',
          allowed: ranges.freeShare,
          examples: ['70 %'],
        }),
      ),
    },
    { description, example: '{ freeArea: 60 in2 }' },
  );

const entryWords = {
  bellmouth: 'bellmouth entry',
  flush: 'flush entry',
  projecting: 'projecting entry',
  'tapered hood': 'tapered hood 45°',
  hood: 'hood entry',
} as const;

const ends = { none: 'none', ...entryWords } as const;

/** Roughness of a duct's wall, by material or as a length. */
const material = word(
  {
    ...themselves(Object.keys(ductRoughnesses) as DuctMaterial[]),
    galvanised: 'galvanised',
    galvanized: 'galvanised',
    'galvanized steel': 'galvanised',
    'sheet metal': 'galvanised',
    PVC: 'plastic',
    aluminum: 'aluminium, crimped round',
    aluminium: 'aluminium, crimped round',
  },
  'What it is made of, for the roughness of its wall.',
);

/** A stretch of duct of one size with everything in it. */
const section = part(
  {
    diameter: z.optional(
      quantity('length', {
        description: 'Inner diameter of a round duct.',
        allowed: ranges.ductSide,
        examples: ['6 in', '150 mm'],
      }),
    ),
    size: z.optional(twoSides('Inner sides of a rectangular duct.')),
    flatOval: z.optional(twoSides('Inner axes of a flat oval duct.')),
    length: quantity('length', {
      description: 'Length along its axis, without fittings.',
      allowed: ranges.ductLength,
      examples: ['24 ft', '7 m'],
    }),
    material: z.optional(material),
    roughness: z.optional(
      quantity('length', {
        description: 'Roughness of its wall.',
        allowed: ranges.roughness,
        examples: ['0.09 mm'],
      }),
    ),
    flexible: z.optional(
      part(
        {
          compression: quantity('ratio', {
            description: 'How much shorter it lies than pulled tight.',
            allowed: ranges.compression,
            examples: ['15 %', '4 %'],
          }),
        },
        { description: 'Flexible duct, as it lies.', example: '{ compression: 15 % }' },
      ),
    ),
    fittings: z.optional(
      branch(
        { map: named(fitting, 'Its fittings: a name and how many.', 'elbow 90: 3') },
        { description: 'Its fittings by name.', examples: ['{ elbow 90: 3 }'] },
      ),
    ),
    entry: z.optional(
      branch(
        {
          text: word(ends, 'How air enters it.'),
          map: part(
            { loss: loss('Loss coefficient of its entry.') },
            { description: 'An entry with its own loss.', example: '{ loss: 0.5 }' },
          ),
        },
        { description: 'How air enters it.', examples: ['flush', '{ loss: 0.5 }'] },
      ),
    ),
    exit: z.optional(
      branch(
        {
          text: word({ open: 'exit', none: 'none' }, 'How air leaves it.'),
          map: part(
            { loss: loss('Loss coefficient of its exit.') },
            { description: 'An exit with its own loss.', example: '{ loss: 1 }' },
          ),
        },
        { description: 'How air leaves it.', examples: ['open', '{ loss: 1 }'] },
      ),
    ),
    cap: z.optional(
      branch(
        {
          text: word(
            themselves(Object.keys(terminalOpenings) as (keyof typeof terminalOpenings)[]),
            'Its end at the wall or roof.',
          ),
          map: ownOpening('A cap with its own loss or free area.'),
        },
        {
          description: 'Its end at the wall or roof.',
          examples: ['hooded cap with flap', '{ loss: 2.5 }'],
        },
      ),
    ),
    louver: z.optional(ownOpening('A louvre across it, by its free area or its loss.')),
    screen: z.optional(
      quantity('ratio', {
        description: 'Free share of a wire screen across it.',
        allowed: ranges.screenShare,
        examples: ['60 %'],
      }),
    ),
    rise: z.optional(
      quantity('length', {
        description: 'Height that it gains in the direction of the air; negative downwards.',
        allowed: ranges.rise,
        examples: ['10 ft', '-2 m'],
      }),
    ),
  },
  {
    description: 'A stretch of duct of one size with its fittings.',
    example: '{ diameter: 10 in, length: 24 ft, fittings: { elbow 90: 3 }, rise: 8 ft }',
  },
);

const duct = branch(
  { map: section, list: z.array(section) },
  {
    description: 'A duct: one stretch, or a list of stretches of several sizes.',
    examples: ['{ diameter: 10 in, length: 24 ft, fittings: { elbow 90: 3 } }'],
  },
);

/** A duct: one stretch, or several in the order in which air passes them. Printed once in the JSON Schema. */
export const ductFile = duct.meta({ ...duct.meta(), id: 'duct' });

/** One stretch as typed. */
export type DuctSectionInFile = z.output<typeof section>;
/** A duct as typed. */
export type DuctInFile = z.output<typeof ductFile>;
