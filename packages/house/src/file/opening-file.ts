import * as z from 'zod';
import { branch } from './schema/branch.js';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { itemName } from './schema/item-name.js';
import { word } from './schema/word.js';
import { closedLeakage } from './closed-leakage.js';
import { damperFile } from './damper-file.js';
import { ductFile } from './duct-file.js';
import { openingLawShape } from './opening-law.js';
import { outletFile } from './outlet-file.js';
import { preparationFile } from './preparation-file.js';
import { ranges } from './ranges.js';

/** The zone that an item belongs to. */
export const zoneName = itemName('Name of the zone that it belongs to.', ['main', 'basement']);

/** Height of an item in its zone. */
export const heightInZone = quantity('length', {
  description:
    'Height of its centre above the floor of its zone; the middle of the zone when absent.',
  allowed: ranges.heightAboveFloor,
});

/** Height of an opening's other end. */
export const endHeight = quantity('length', {
  description:
    'Height of its other end above the floor of its zone, where a vertical duct or shaft leads up or down; the same height when absent.',
  allowed: ranges.endHeight,
  examples: ['10 ft', '-2.5 m'],
});

const position = word({ open: 'open', shut: 'shut', closed: 'shut' }, 'A position of the opening.');

/** A hole that is always there: grille, passive vent, attic vents, barometric inlet; or a window. */
export const openingFile = part(
  {
    zone: z.optional(zoneName),
    to: z.optional(outletFile),
    height: z.optional(heightInZone),
    endHeight: z.optional(endHeight),
    duringTest: z.optional(preparationFile),
    duct: z.optional(ductFile),
    damper: z.optional(damperFile),
    positions: z.optional(
      branch(
        { text: position, list: z.array(position) },
        {
          description: 'Positions to study, for a window; always open when absent.',
          examples: ['[open, shut]', 'open'],
        },
      ),
    ),
    baseline: z.optional(position),
    closedLeakage: z.optional(closedLeakage),
    ...openingLawShape,
  },
  {
    description:
      'A hole that is always there. One of area, diameter, netFreeArea, grossArea, flow, leakageArea or coefficient says how much air it passes.',
    example: '{ zone: attic, to: roof, area: 300 in2 }',
  },
);

/** What {@link openingFile} reads. */
export type OpeningInFile = z.output<typeof openingFile>;
