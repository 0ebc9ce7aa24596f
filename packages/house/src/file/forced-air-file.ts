import * as z from 'zod';
import { branch } from './schema/branch.js';
import { flag } from './schema/flag.js';
import { measuredLeak } from './schema/measured-leak.js';
import { named } from './schema/named.js';
import { part } from './schema/part.js';
import { plainNumber } from './schema/plain-number.js';
import { quantity } from './schema/quantity.js';
import { constantFlowFile, deviceFlow } from './device-file.js';
import { zoneName } from './opening-file.js';
import { outletFile } from './outlet-file.js';
import { preparationFile } from './preparation-file.js';
import { ranges } from './ranges.js';

const registerShare = quantity('ratio', {
  description: 'Share of the flow of all such registers.',
  allowed: ranges.registerShare,
  examples: ['60 %'],
});

const registers = (description: string) =>
  branch(
    { text: zoneName, map: named(registerShare, description, 'main: 60 %') },
    { description, examples: ['main', '{ main: 60 %, bedroom: 40 % }'] },
  );

const leakFile = part(
  {
    share: z.optional(
      quantity('ratio', {
        description: 'Share of the fan’s flow that leaks while it runs.',
        allowed: ranges.leakedShare,
        examples: ['8 %'],
      }),
    ),
    flow: z.optional(
      measuredLeak(['flow'], {
        description: 'Leakage as a test of the ducts found it.',
        examples: ['60 cfm at 25 Pa'],
      }),
    ),
    exponent: z.optional(
      plainNumber(ranges.exponent, 'Flow exponent of the leakage; 0.6 when absent.', [0.6]),
    ),
    to: outletFile,
  },
  {
    description:
      'Leakage of the ducts on one side, to one place. The total of a duct test is not its leakage to outdoors: say where each part goes.',
    example: '{ flow: 60 cfm at 25 Pa, to: attic }',
  },
);

const leaks = (side: string) =>
  branch(
    { map: leakFile, list: z.array(leakFile) },
    {
      description: `Leakage of the ${side} ducts; none when absent.`,
      examples: ['{ share: 8 %, to: attic }', '[{ flow: 60 cfm at 25 Pa, to: attic }]'],
    },
  );

const ductPressure = (side: string) =>
  quantity('pressure', {
    description: `Pressure difference between the ${side} ducts and the rooms while the fan runs, whatever its sign; 25 Pa when absent.`,
    allowed: ranges.fanPressure,
    examples: ['25 Pa', '0.1 in. w.c.'],
  });

/** A forced-air system. */
export const forcedAirFile = part(
  {
    flow: deviceFlow,
    supplies: registers('Rooms with supply registers, with the share that each gets.'),
    returns: registers('Rooms with return registers, with the share that each gives.'),
    supplyLeakage: z.optional(leaks('supply')),
    returnLeakage: z.optional(leaks('return')),
    supplyPressure: z.optional(ductPressure('supply')),
    returnPressure: z.optional(ductPressure('return')),
    shutOffPressure: z.optional(
      quantity('pressure', {
        description:
          'Pressure between its supply and return ducts at which its blower moves no air; 350 Pa when absent, or twice the pressures of its ducts if that is more.',
        allowed: ranges.fanPressure,
        examples: ['350 Pa', '1.4 in. w.c.'],
      }),
    ),
    constantFlow: z.optional(constantFlowFile),
    standingLoss: z.optional(
      quantity('pressure', {
        description:
          'Pressure that its filter, coil and cabinet would take at its flow; 75 Pa when absent. It holds for the air that passes while the fan stands.',
        allowed: ranges.fanPressure,
        examples: ['75 Pa', '0.3 in. w.c.'],
      }),
    ),
    duringTest: z.optional(preparationFile),
    continuous: z.optional(flag('Whether its fan runs all the time.')),
  },
  {
    description: 'A forced-air system: an air handler, its registers by room, and duct leakage.',
    example: '{ flow: 1000 cfm, supplies: { main: 60 %, bedroom: 40 % }, returns: main }',
  },
);

/** What {@link forcedAirFile} reads. */
export type ForcedAirInFile = z.output<typeof forcedAirFile>;
