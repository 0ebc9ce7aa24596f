import * as z from 'zod';
import { branch } from './schema/branch.js';
import { flag } from './schema/flag.js';
import { part } from './schema/part.js';
import { deviceFlow } from './device-file.js';
import { zoneName } from './opening-file.js';

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
