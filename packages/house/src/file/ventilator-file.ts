import * as z from 'zod';
import { branch } from './schema/branch.js';
import { flag } from './schema/flag.js';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { word } from './schema/word.js';
import { deviceFlow } from './device-file.js';
import { zoneName } from './opening-file.js';
import { ranges } from './ranges.js';

/** A balanced ventilator, by its flow or in full. */
export const ventilatorFile = branch(
  {
    text: deviceFlow,
    map: part(
      {
        flow: z.optional(deviceFlow),
        supply: z.optional(deviceFlow),
        exhaust: z.optional(deviceFlow),
        zone: z.optional(zoneName),
        supplyZone: z.optional(zoneName),
        exhaustZone: z.optional(zoneName),
        continuous: z.optional(flag('Whether it runs all the time.')),
        defrost: z.optional(
          word(
            {
              'exhaust only': 'exhaust only',
              'supply stopped': 'exhaust only',
              'supply only': 'supply only',
              'exhaust stopped': 'supply only',
            },
            'What still flows while it keeps its core free of frost; a mode of its own in the states.',
          ),
        ),
        dirtyFilter: z.optional(
          quantity('ratio', {
            description:
              'Share of the supply flow that a dirty filter costs; a mode of its own in the states.',
            allowed: ranges.lostShare,
            examples: ['30 %'],
          }),
        ),
      },
      {
        description:
          'A ventilator: one flow for both ways, or supply and exhaust where they differ.',
        example: '{ supply: 110 cfm, exhaust: 100 cfm, continuous: true }',
      },
    ),
  },
  {
    description: 'A balanced ventilator whose control holds both flows.',
    examples: ['110 cfm', '{ supply: 110 cfm, exhaust: 100 cfm }'],
  },
);
