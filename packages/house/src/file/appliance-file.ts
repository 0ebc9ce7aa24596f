import * as z from 'zod';
import { distinctKinds, kindNames } from '../kind-names.js';
import { branch } from './schema/branch.js';
import { flag } from './schema/flag.js';
import { itemName } from './schema/item-name.js';
import { part } from './schema/part.js';
import { quantity } from './schema/quantity.js';
import { themselves, word } from './schema/word.js';
import { zoneName } from './opening-file.js';
import { flueFile } from './flue-file.js';
import { ranges } from './ranges.js';

/** How an appliance gets rid of its combustion gas, with other words in use for the same. */
const ventFile = word(
  {
    'natural draft': 'natural draft',
    'natural draught': 'natural draft',
    atmospheric: 'natural draft',
    'fan assisted': 'fan assisted',
    'fan assist': 'fan assisted',
    'induced draft': 'induced draft',
    'induced draught': 'induced draft',
    'power vented': 'power vented',
    'power vent': 'power vented',
    'direct vent': 'direct vent',
    'direct vented': 'direct vent',
    'sealed combustion': 'sealed combustion',
    sealed: 'sealed combustion',
    'open hearth': 'open hearth',
    'closed stove': 'closed stove',
    unvented: 'unvented',
    'vent free': 'unvented',
    electric: 'electric',
  },
  'How it gets rid of its combustion gas. Limits depend on it, so it must be said.',
);

const otherAppliance = itemName('Name of another appliance.', ['furnace']);

/** A combustion appliance or hearth. */
export const applianceFile = part(
  {
    kind: z.optional(
      word(
        themselves(distinctKinds(kindNames.appliances)),
        'What it is; may be left out where its name says it.',
      ),
    ),
    vent: ventFile,
    fuel: z.optional(
      word(
        {
          gas: 'gas',
          'natural gas': 'gas',
          propane: 'gas',
          oil: 'oil',
          wood: 'wood',
          pellets: 'pellets',
          pellet: 'pellets',
          'not stated': 'not stated',
        },
        'What it burns.',
      ),
    ),
    zone: z.optional(zoneName),
    input: z.optional(
      quantity('power', { description: 'Input of its burner.', allowed: ranges.power }),
    ),
    sharesVentWith: z.optional(
      branch(
        { text: otherAppliance, list: z.array(otherAppliance) },
        { description: 'Other appliances on the same vent.', examples: ['furnace', '[furnace]'] },
      ),
    ),
    ventDamper: z.optional(flag('Whether a damper closes its vent while it does not fire.')),
    chimney: z.optional(
      part(
        {
          height: z.optional(
            quantity('length', {
              description: 'Height of the top above the appliance’s outlet.',
              allowed: ranges.height,
              examples: ['22 ft', '7 m'],
            }),
          ),
          exterior: z.optional(flag('Whether the chimney stands outside the heated house.')),
        },
        {
          description: 'Its chimney, for limits that depend on it; a flue says more.',
          example: '{ height: 22 ft, exterior: true }',
        },
      ),
    ),
    flue: z.optional(flueFile),
  },
  {
    description: 'A combustion appliance or hearth that the suction of the house may upset.',
    example: '{ vent: natural draft, fuel: gas, input: 40 kBtu/h }',
  },
);
