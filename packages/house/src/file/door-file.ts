import * as z from 'zod';
import { branch } from './schema/branch.js';
import { accept, refuse, type ValueResult } from './schema/file-problem.js';
import { checkName } from './schema/item-name.js';
import { leaf } from './schema/leaf.js';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';
import { themselves, word } from './schema/word.js';
import { plainNumber } from './schema/plain-number.js';
import { ductFile } from './duct-file.js';
import { openingLawShape } from './opening-law.js';
import { ranges } from './ranges.js';

const position = word({ open: 'open', shut: 'shut', closed: 'shut' }, 'A position of the door.');

const pairExamples = ['[main, bedroom]'];

const twoZones = leaf(
  {
    description: 'The two zones that it connects.',
    examples: pairExamples,
    jsonSchema: { type: 'array', items: { type: 'string' }, minItems: 2, maxItems: 2 },
  },
  (value): ValueResult<readonly [string, string]> => {
    if (!Array.isArray(value) || value.length !== 2) {
      const found = Array.isArray(value) ? `a list of ${value.length}` : shapeWords[shapeOf(value)];
      return refuse('value.wrong-shape', { found, accepted: pairExamples });
    }
    const [one, other] = Array.from<unknown, ValueResult<string>>(value, nameAt);
    if (one?.ok === true && other?.ok === true) return accept([one.value, other.value]);
    return {
      ok: false,
      problems: [one, other].flatMap((each) => (each?.ok === false ? each.problems : [])),
    };
  },
);

const undercutArea = quantity('area', {
  description: 'Free area under the shut door.',
  allowed: ranges.openingArea,
  examples: ['16 in2', '100 cm2'],
});

const openingSize = {
  width: z.optional(
    quantity('length', {
      description: 'Clear width of the opening; 0.9 m (35 in) when absent.',
      allowed: ranges.doorSize,
      examples: ['32 in', '90 cm'],
    }),
  ),
  height: z.optional(
    quantity('length', {
      description: 'Clear height of the opening; 2.0 m (79 in) when absent.',
      allowed: ranges.doorSize,
      examples: ['80 in', '2 m'],
    }),
  ),
};

const grilleArea = quantity('area', {
  description: 'Net free area.',
  allowed: ranges.openingArea,
  examples: ['20 in2', '130 cm2'],
});

const louvreSize = {
  height: z.optional(
    quantity('length', {
      description: 'Height of the louvred part, from the floor; that of the door when absent.',
      allowed: ranges.doorSize,
      examples: ['80 in', '2 m'],
    }),
  ),
};

/** An interior door. */
export const doorFile = part(
  {
    between: twoZones,
    kind: z.optional(
      word(
        themselves(['door', 'archway', 'stair opening']),
        'What it is; a door when absent. An archway and a stair opening cannot be shut.',
      ),
    ),
    open: z.optional(
      part(
        {
          ...openingSize,
          dischargeCoefficient: z.optional(
            plainNumber(
              ranges.dischargeCoefficient,
              'Discharge coefficient of the opening; 0.6 when absent.',
              [0.6, 0.65],
            ),
          ),
        },
        {
          description: 'Size of the open door, through which air can flow both ways.',
          example: '{ width: 32 in, height: 80 in }',
        },
      ),
    ),
    undercut: z.optional(
      branch(
        {
          text: undercutArea,
          map: part(
            {
              gap: quantity('length', {
                description: 'Gap under the shut door.',
                allowed: ranges.height,
                examples: ['1/2 in', '10 mm'],
              }),
              width: quantity('length', {
                description: 'Width of the door.',
                allowed: ranges.height,
                examples: ['32 in', '80 cm'],
              }),
            },
            { description: 'The gap and its width.', example: '{ gap: 1/2 in, width: 32 in }' },
          ),
        },
        {
          description: 'What stays open under the shut door; 12 in2 when absent.',
          examples: ['16 in2', '{ gap: 1/2 in, width: 32 in }'],
        },
      ),
    ),
    grille: z.optional(
      branch(
        {
          text: grilleArea,
          map: part(
            {
              netFreeArea: grilleArea,
              height: z.optional(
                quantity('length', {
                  description:
                    'Height of its centre above the floor; half of the door when absent.',
                  allowed: ranges.heightAboveFloor,
                  examples: ['6 in', '2.2 m'],
                }),
              ),
            },
            {
              description: 'The grille and its height.',
              example: '{ netFreeArea: 40 in2, height: 7 ft }',
            },
          ),
        },
        {
          description: 'A transfer grille in or beside the door: its net free area, or in full.',
          examples: ['20 in2', '{ netFreeArea: 40 in2, height: 7 ft }'],
        },
      ),
    ),
    louvre: z.optional(
      branch(
        {
          text: grilleArea,
          map: part(
            {
              netFreeArea: z.optional(grilleArea),
              ...louvreSize,
              grossArea: openingLawShape.grossArea,
              madeOf: openingLawShape.louvre,
            },
            {
              description: 'The louvred part of the door.',
              example: '{ grossArea: 1400 in2, madeOf: wood }',
            },
          ),
        },
        {
          description:
            'A louvred door, as on a closet with an appliance: its net free area, or its face area and what it is made of.',
          examples: ['300 in2', '{ grossArea: 1400 in2, madeOf: wood }'],
        },
      ),
    ),
    jumpDuct: z.optional(ductFile),
    positions: z.optional(
      branch(
        { text: position, list: z.array(position) },
        {
          description: 'Positions that are studied; both when absent.',
          examples: ['[open, shut]', 'shut', 'open'],
        },
      ),
    ),
    baseline: z.optional(position),
  },
  {
    description:
      'An interior door, an archway or a stair opening: a tall opening that states open or shut.',
    example: '{ between: [main, bedroom], undercut: 16 in2 }',
  },
);

/** What {@link doorFile} reads. */
export type DoorInFile = z.output<typeof doorFile>;

function nameAt(value: unknown, index: number): ValueResult<string> {
  const shape = shapeOf(value);
  const read =
    shape === 'text' || shape === 'number'
      ? checkName(String(value))
      : refuse('value.wrong-shape', { found: shapeWords[shape], accepted: ['main', 'bedroom'] });
  if (read.ok) return read;
  return { ok: false, problems: read.problems.map((each) => ({ ...each, path: [index] })) };
}
