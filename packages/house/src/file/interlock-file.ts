import * as z from 'zod';
import { branch } from './schema/branch.js';
import { itemName } from './schema/item-name.js';
import { part } from './schema/part.js';

const driver = itemName('Name of the device or ventilator that drives it.', ['hood', 'dryer']);
const speed = itemName('Name of a speed of the driver.', ['high']);

/** What makes something run or open. */
export const interlockFile = branch(
  {
    text: driver,
    map: part(
      {
        device: driver,
        speeds: z.optional(
          branch(
            { text: speed, list: z.array(speed) },
            {
              description: 'Speeds of the driver at which it follows; all when absent.',
              examples: ['[high]', 'high'],
            },
          ),
        ),
      },
      { description: 'A driver and its speeds.', example: '{ device: hood, speeds: [high] }' },
    ),
  },
  {
    description: 'The device that makes it run or open, at all speeds or at some.',
    examples: ['hood', '{ device: hood, speeds: [high] }'],
  },
);

/** What {@link interlockFile} reads. */
export type InterlockInFile = z.output<typeof interlockFile>;
