import { damperLeakageClasses, type DamperLeakageClass } from '@evendraft/airflow';
import * as z from 'zod';
import { branch } from './schema/branch.js';
import { part } from './schema/part.js';
import { plainNumber } from './schema/plain-number.js';
import { quantity } from './schema/quantity.js';
import { themselves, word } from './schema/word.js';
import { interlockFile } from './interlock-file.js';
import { ranges } from './ranges.js';

const kind = word(
  {
    gravity: 'gravity',
    backdraft: 'gravity',
    barometric: 'barometric',
    motorized: 'motorized',
    motorised: 'motorized',
    none: 'none',
  },
  'What opens and shuts it: the air, a weight that is set, a motor; or that there is none.',
);

const damper = branch(
  {
    text: kind,
    map: part(
      {
        kind,
        diameter: z.optional(
          quantity('length', {
            description: 'Its diameter; that of the duct when absent.',
            allowed: ranges.ductSide,
            examples: ['10 in', '250 mm'],
          }),
        ),
        loss: z.optional(
          plainNumber(
            ranges.damperLoss,
            'Loss coefficient when fully open, by the velocity pressure in it.',
            [1.8, 0.5],
          ),
        ),
        opensAt: z.optional(
          quantity('pressure', {
            description: 'Pressure difference at which it starts to open.',
            allowed: ranges.opensAt,
            examples: ['3 Pa', '0.01 in. w.c.'],
          }),
        ),
        fullyOpenAt: z.optional(
          quantity('pressure', {
            description: 'Pressure difference from which it is fully open.',
            allowed: ranges.fanPressure,
            examples: ['15 Pa', '0.06 in. w.c.'],
          }),
        ),
        leakageClass: z.optional(
          word(
            themselves(Object.keys(damperLeakageClasses) as DamperLeakageClass[]),
            'Leakage class of the closed damper.',
          ),
        ),
        stuck: z.optional(
          word({ open: 'open', shut: 'shut', closed: 'shut' }, 'That it is stuck, and how.'),
        ),
        opensWith: z.optional(interlockFile),
      },
      {
        description: 'A damper with what is known of it.',
        example: '{ kind: gravity, opensAt: 3 Pa, fullyOpenAt: 15 Pa, leakageClass: AMCA 2 }',
      },
    ),
  },
  {
    description: 'The damper in the way of the air.',
    examples: ['gravity', 'motorized', 'none', '{ kind: motorized, leakageClass: AMCA 1 }'],
  },
);

/** A damper in the way of the air. Printed once in the JSON Schema. */
export const damperFile = damper.meta({ ...damper.meta(), id: 'damper' });

/** A damper as typed. */
export type DamperInFile = z.output<typeof damperFile>;
