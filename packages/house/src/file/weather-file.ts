import * as z from 'zod';
import { accept, refuse, type ValueResult } from './schema/file-problem.js';
import { branch } from './schema/branch.js';
import { itemName } from './schema/item-name.js';
import { leaf } from './schema/leaf.js';
import { part } from './schema/part.js';
import { quantity, readQuantity } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';
import { themselves, word } from './schema/word.js';
import { ranges } from './ranges.js';

/** A direction that the wind comes from: degrees from north, or a face of the house. */
export type WindFrom =
  | { readonly kind: 'degrees'; readonly degrees: number }
  | { readonly kind: 'face'; readonly face: 'front' | 'right' | 'back' | 'left' };

/** A wind as typed. */
export interface WindInFile {
  readonly speed: number;
  readonly from?: WindFrom | undefined;
  readonly at?: 'eaves' | 'station' | undefined;
}

const fromExamples = ['NW', '315 deg', 'front'];
const windExamples = ['12 mph from NW', '6 m/s from 315 deg', 'calm'];
const speedExamples = ['12 mph', '6 m/s'];
const faces = ['front', 'right', 'back', 'left'] as const;

function readFrom(value: unknown): ValueResult<WindFrom> {
  const word = typeof value === 'string' ? value.trim().toLowerCase() : '';
  const face = faces.find((each) => each === word);
  if (face) return accept({ kind: 'face', face });
  const degrees = readQuantity(value, {
    dimension: 'angle',
    allowed: ranges.angle,
    examples: fromExamples,
  });
  return degrees.ok ? accept({ kind: 'degrees', degrees: degrees.value }) : degrees;
}

const windText = leaf(
  {
    description:
      'Wind: speed, `from`, and where it comes from; at eave height of the house, or at a weather station where the file has the key `wind`.',
    examples: windExamples,
    jsonSchema: { type: 'string', unit: 'speed' },
  },
  (value): ValueResult<WindInFile> => {
    const shape = shapeOf(value);
    if (shape !== 'text' && shape !== 'number') {
      return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: windExamples });
    }
    const text = String(value).trim();
    if (/^(calm|still|none)$/i.test(text)) return accept({ speed: 0 });
    const [, amount = text, direction] = /^(.*?)(?:\s+from\s+(.*))?$/is.exec(text) ?? [];
    const speed = readQuantity(amount, {
      dimension: 'speed',
      allowed: ranges.speed,
      examples: windExamples,
    });
    if (!speed.ok) return speed;
    if (direction === undefined) return accept({ speed: speed.value });
    const from = readFrom(direction);
    return from.ok ? accept({ speed: speed.value, from: from.value }) : from;
  },
);

const windFile = branch(
  {
    text: windText,
    map: part(
      {
        speed: quantity('speed', {
          description: 'Wind speed.',
          allowed: ranges.speed,
          examples: speedExamples,
        }),
        from: z.optional(
          leaf(
            {
              description: 'Where the wind comes from: a compass point, degrees, or a face.',
              examples: fromExamples,
            },
            readFrom,
          ),
        ),
        at: z.optional(
          word(
            themselves(['eaves', 'station']),
            'Where it was measured: at the eaves of the house, or at a weather station.',
          ),
        ),
      },
      { description: 'Speed and direction of the wind.', example: '{ speed: 12 mph, from: NW }' },
    ),
  },
  { description: 'The wind; calm when absent.', examples: windExamples },
);

/** One weather to study. */
export const weatherFile = part(
  {
    name: itemName('Name of the weather, for the report.', ['winter design', 'still']),
    outdoorTemperature: quantity('temperature', {
      description: 'Outdoor air temperature.',
      allowed: ranges.temperature,
      examples: ['5 F', '-15 C'],
    }),
    wind: z.optional(windFile),
  },
  {
    description: 'One weather to study.',
    example: '{ name: winter design, outdoorTemperature: 5 F, wind: 12 mph from NW }',
  },
);
