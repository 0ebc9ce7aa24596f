import * as z from 'zod';
import { branch } from './schema/branch.js';
import { flag } from './schema/flag.js';
import { part } from './schema/part.js';
import { plainNumber } from './schema/plain-number.js';
import { quantity } from './schema/quantity.js';
import { word } from './schema/word.js';
import { flueSize } from './flue-size.js';
import { heightInZone } from './opening-file.js';
import { outletFile } from './outlet-file.js';
import { preparationFile } from './preparation-file.js';
import { ranges } from './ranges.js';

const diameter = quantity('length', {
  description: 'Clear diameter of a round flue.',
  allowed: ranges.flueDiameter,
  examples: ['4 in', '100 mm'],
});

const length = (description: string) =>
  quantity('length', { description, allowed: ranges.height, examples: ['6 ft', '2 m'] });

const area = (description: string) =>
  quantity('area', {
    description,
    allowed: ranges.openingArea,
    examples: ['20 in2', '130 cm2'],
  });

const construction = z.optional(
  word(
    {
      'masonry, tile-lined': 'masonry, tile-lined',
      'masonry lined': 'masonry, tile-lined',
      'masonry, unlined': 'masonry, unlined',
      'masonry unlined': 'masonry, unlined',
      'masonry, metal liner': 'masonry, metal liner',
      'metal liner': 'masonry, metal liner',
      'masonry, metal liner, insulated': 'masonry, metal liner, insulated',
      'insulated metal liner': 'masonry, metal liner, insulated',
      'single-wall metal': 'single-wall metal',
      metal: 'single-wall metal',
      'double-wall gas vent': 'double-wall gas vent',
      'double wall': 'double-wall gas vent',
      'insulated metal chimney': 'insulated metal chimney',
      'insulated chimney': 'insulated metal chimney',
    },
    'What its wall is.',
  ),
);

const count = (what: string) =>
  z.optional(plainNumber(ranges.fittings, `Number of ${what}.`, [1, 2]));

/** Fittings by which gas passes. */
const fittings = {
  elbows: count('elbows of 90°'),
  halfElbows: count('elbows of 45°'),
  tees: count('tees'),
};

const connectorFile = part(
  {
    length: z.optional(length('Length, without its fittings.')),
    rise: z.optional(
      quantity('length', {
        description: 'Height that it gains.',
        allowed: ranges.connectorRise,
        examples: ['1 ft', '30 cm'],
      }),
    ),
    diameter: z.optional(diameter),
    construction,
    ...fittings,
  },
  {
    description: 'The pipe from the appliance to its chimney.',
    example: '{ length: 5 ft, rise: 1 ft, elbows: 2 }',
  },
);

const draftHoodFile = branch(
  {
    flag: flag('Whether it has a draft hood.'),
    text: flag('Whether it has a draft hood.'),
    map: part(
      { reliefArea: area('Free area of its relief opening.') },
      { description: 'Its draft hood.', example: '{ reliefArea: 20 in2 }' },
    ),
  },
  {
    description:
      'Whether it has a draft hood, and how large its relief opening is; a natural-draft gas appliance has one when absent.',
    examples: [true, '{ reliefArea: 20 in2 }'],
  },
);

const regulatorFile = branch(
  {
    flag: flag('Whether it has a barometric regulator.'),
    text: flag('Whether it has a barometric regulator.'),
    map: part(
      {
        setting: z.optional(
          quantity('pressure', {
            description: 'Draft at which its gate begins to open; 7.5 Pa when absent.',
            allowed: ranges.opensAt,
            examples: ['0.03 in. w.c.', '7.5 Pa'],
          }),
        ),
        diameter: z.optional(diameter),
      },
      { description: 'Its barometric regulator.', example: '{ setting: 0.03 in. w.c. }' },
    ),
  },
  {
    description: 'Whether it has a barometric regulator; an oil appliance has one when absent.',
    examples: [true, '{ setting: 0.03 in. w.c., diameter: 6 in }'],
  },
);

/** The flue of an appliance or hearth. */
export const flueFile = part(
  {
    height: z.optional(
      length(
        'Height of the top of the chimney above the end of the connector, or above the hearth.',
      ),
    ),
    diameter: z.optional(diameter),
    size: z.optional(flueSize),
    construction,
    ...fittings,
    cap: z.optional(
      word(
        {
          'open top': 'open top',
          none: 'open top',
          'low-resistance cap': 'low-resistance cap',
          'low resistance': 'low-resistance cap',
          cap: 'cap',
        },
        'What stands on its top.',
      ),
    ),
    exteriorShare: z.optional(
      quantity('ratio', {
        description: 'Share of its height that stands outdoors, above the roof or at a wall.',
        allowed: ranges.share,
        examples: ['20 %', '100 %'],
      }),
    ),
    to: z.optional(outletFile),
    collarHeight: z.optional(heightInZone),
    connector: z.optional(connectorFile),
    draftHood: z.optional(draftHoodFile),
    barometricRegulator: z.optional(regulatorFile),
    idleOpening: z.optional(
      area('Free area for room air through the appliance into its flue while it does not fire.'),
    ),
    opening: z.optional(area('Opening of a hearth, or of a stove whose door stands open.')),
    shutOpening: z.optional(
      area('What its shut doors and air controls leave open; a hearth without it has no doors.'),
    ),
    damper: z.optional(
      part(
        { shutArea: area('Area that it leaves open when shut.') },
        { description: 'A damper in the throat or the flue.', example: '{ shutArea: 3 in2 }' },
      ),
    ),
    duringTest: z.optional(preparationFile),
  },
  {
    description:
      'Its flue as an opening of the house. An appliance on the chimney of another gives no height.',
    example: '{ height: 22 ft, diameter: 5 in, connector: { length: 5 ft, rise: 1 ft } }',
  },
);

/** What {@link flueFile} reads. */
export type FlueInFile = z.output<typeof flueFile>;
