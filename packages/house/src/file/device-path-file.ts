import * as z from 'zod';
import { branch } from './schema/branch.js';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { word } from './schema/word.js';
import { damperFile } from './damper-file.js';
import { ductFile } from './duct-file.js';
import { ranges } from './ranges.js';

const boosterFlow = quantity('volumeFlow', {
  description: 'Flow of the bare fan, as rated.',
  allowed: ranges.flow,
  examples: ['160 cfm', '75 L/s'],
});

/** Keys of a device that describe what its air passes besides the fan. */
export const devicePathShape = {
  duct: z.optional(ductFile),
  inletDuct: z.optional(ductFile),
  blower: z.optional(
    word(
      {
        'in hood': 'in unit',
        'in the hood': 'in unit',
        'in unit': 'in unit',
        internal: 'in unit',
        inline: 'inline',
        remote: 'remote',
        external: 'remote',
      },
      'Where its fan sits: in the unit before its duct, inline between inletDuct and duct, or remote at the far end.',
    ),
  ),
  damper: z.optional(damperFile),
  stoppedLoss: z.optional(
    quantity('pressure', {
      description: 'Pressure that its stopped fan takes at its greatest rated flow.',
      allowed: ranges.fanPressure,
      examples: ['60 Pa', '0.25 in. w.c.'],
    }),
  ),
  lintScreen: z.optional(
    quantity('pressure', {
      description: 'Pressure that its lint screen takes at its greatest rated flow.',
      allowed: ranges.fanPressure,
      examples: ['40 Pa', '0.15 in. w.c.'],
    }),
  ),
  boosterFan: z.optional(
    branch(
      {
        text: boosterFlow,
        map: part(
          {
            flow: boosterFlow,
            ratingPressure: z.optional(
              quantity('pressure', {
                description: 'Pressure at which its flow is rated.',
                allowed: ranges.ratingPressure,
                examples: ['60 Pa'],
              }),
            ),
            shutOffPressure: z.optional(
              quantity('pressure', {
                description: 'Pressure at which it moves nothing.',
                allowed: ranges.fanPressure,
                examples: ['250 Pa'],
              }),
            ),
          },
          { description: 'A booster fan in full.', example: '{ flow: 160 cfm }' },
        ),
      },
      {
        description: 'A second fan in its duct that runs with it.',
        examples: ['160 cfm', '{ flow: 160 cfm, shutOffPressure: 250 Pa }'],
      },
    ),
  ),
} satisfies z.ZodRawShape;

/** What {@link devicePathShape} reads. */
export type DevicePathInFile = {
  readonly [Key in keyof typeof devicePathShape]?: z.output<(typeof devicePathShape)[Key]>;
};
