import * as z from 'zod';
import { accept, refuse } from './schema/file-problem.js';
import { branch } from './schema/branch.js';
import { itemName } from './schema/item-name.js';
import { leaf } from './schema/leaf.js';
import { named } from './schema/named.js';
import { part } from './schema/part.js';
import { plainNumber } from './schema/plain-number.js';
import { quantity } from './schema/quantity.js';
import { airtightnessFile } from './airtightness-file.js';
import { applianceFile } from './appliance-file.js';
import { combustionAirFile } from './combustion-air-file.js';
import { deviceFlow, exhaustMap, speedFile, supplyMap } from './device-file.js';
import { doorFile } from './door-file.js';
import { forcedAirFile } from './forced-air-file.js';
import { makeUpFile } from './make-up-file.js';
import { openingFile } from './opening-file.js';
import { ranges } from './ranges.js';
import { surroundingFile } from './surrounding-file.js';
import { ventilatorFile } from './ventilator-file.js';
import { weatherFile } from './weather-file.js';
import { windFile } from './wind-file.js';
import { zoneFile } from './zone-file.js';

/** The version of the house file that this library reads. */
const houseFileVersion = 1;

const versionFile = leaf(
  {
    description: 'Version of the house file.',
    examples: [houseFileVersion],
    jsonSchema: { const: houseFileVersion },
  },
  (value) => {
    if (value === houseFileVersion) return accept(houseFileVersion);
    const found = typeof value === 'object' ? 'a list or a map' : String(value).slice(0, 60);
    return refuse('version.unknown', { found, allowed: String(houseFileVersion) });
  },
);

/** A device for the JSON Schema; it is read in `reading/read-devices.ts`. Keys it does not have are names of speeds. */
const deviceFile = (full: typeof exhaustMap | typeof supplyMap): z.ZodType =>
  z.union([deviceFlow, z.object(full.shape).catchall(speedFile)]).meta({
    description: 'A device: its flow, its speeds, or everything about it.',
    accepted: [
      '150 cfm',
      '{ low: 250 cfm, high: 900 cfm }',
      '{ kind: bath fan, flow: 80 cfm, zone: main }',
    ],
  });

/**
 * The whole house file. A file is read key by key and item by item with the schemas in it; as a whole it
 * is what the JSON Schema is printed from.
 */
export const houseFile = part(
  {
    evendraft: versionFile,
    name: itemName('Name of the house, for the report.', ['Alder Row 14']),
    floorArea: quantity('area', {
      description: 'Conditioned floor area, all storeys.',
      allowed: ranges.floorArea,
      examples: ['2180 ft2', '200 m2'],
    }),
    volume: z.optional(
      quantity('volume', {
        description: 'Volume inside the tested envelope; from the ceiling height when absent.',
        allowed: ranges.volume,
        examples: ['18500 ft3', '520 m3'],
      }),
    ),
    ceilingHeight: z.optional(
      quantity('length', {
        description: 'Floor to ceiling, where no volume is known; 2.5 m (8.2 ft) when absent.',
        allowed: ranges.height,
        examples: ['8.5 ft', '8\'-6"', '2.6 m'],
      }),
    ),
    storeys: z.optional(
      plainNumber(
        ranges.storeys,
        'Number of storeys, for a house without zones; 1 when absent.',
        [1, 2],
      ),
    ),
    altitude: z.optional(
      quantity('length', {
        description: 'Height above sea level; 0 when absent.',
        allowed: ranges.altitude,
        examples: ['900 ft', '270 m'],
      }),
    ),
    indoorTemperature: z.optional(
      quantity('temperature', {
        description: 'Indoor temperature of zones that give none; 20 °C (68 °F) when absent.',
        allowed: ranges.temperature,
      }),
    ),
    frontFaces: z.optional(
      quantity('angle', {
        description: 'Where the front looks; north when absent.',
        allowed: ranges.angle,
        examples: ['N', 'SW', '210 deg'],
      }),
    ),
    plan: z.optional(
      part(
        {
          front: quantity('length', {
            description: 'Length of front and back.',
            allowed: { above: 0, to: 1000, words: 'more than 0, up to 1000 m' },
            examples: ['40 ft', '12 m'],
          }),
          side: quantity('length', {
            description: 'Length of the two sides.',
            allowed: { above: 0, to: 1000, words: 'more than 0, up to 1000 m' },
            examples: ['28 ft', '9 m'],
          }),
        },
        {
          description: 'Plan of the house, for wind; square when absent.',
          example: '{ front: 40 ft, side: 28 ft }',
        },
      ),
    ),
    wind: z.optional(windFile),
    airtightness: airtightnessFile,
    zones: z.optional(
      named(
        zoneFile,
        'Rooms, floors and buffer spaces; one zone when absent.',
        'main: { kind: living, area: 1200 ft2 }',
      ),
    ),
    surroundings: z.optional(
      named(
        surroundingFile,
        'Neighbours, corridors, shafts beyond the house.',
        'corridor: { temperature: 68 F, pressure: 0 Pa }',
      ),
    ),
    openings: z.optional(
      named(
        openingFile,
        'Holes that are always there.',
        'attic vents: { zone: attic, to: roof, area: 300 in2 }',
      ),
    ),
    combustionAir: z.optional(
      named(
        combustionAirFile,
        'Openings that bring combustion air.',
        'closet air: { zone: closet, to: attic, high: 100 in2, low: 100 in2 }',
      ),
    ),
    doors: z.optional(
      named(
        doorFile,
        'Doors between zones.',
        'bedroom door: { between: [main, bedroom], undercut: 16 in2 }',
      ),
    ),
    exhaust: z.optional(
      named(deviceFile(exhaustMap), 'Devices that carry air out.', 'dryer: 150 cfm'),
    ),
    supply: z.optional(
      named(deviceFile(supplyMap), 'Fans that bring air in.', 'supply fan: 100 cfm'),
    ),
    makeUp: z.optional(
      named(
        makeUpFile,
        'Make-up air openings behind dampers.',
        'kitchen make-up: { opensWith: hood, diameter: 8 in }',
      ),
    ),
    ventilators: z.optional(named(ventilatorFile, 'Balanced ventilators.', 'hrv: 110 cfm')),
    forcedAir: z.optional(
      named(
        forcedAirFile,
        'Forced-air systems: air handlers with their registers and duct leakage.',
        'air handler: { flow: 1000 cfm, supplies: main, returns: main }',
      ),
    ),
    appliances: z.optional(
      named(
        applianceFile,
        'Combustion appliances and hearths.',
        'water heater: { vent: natural draft, fuel: gas }',
      ),
    ),
    weather: z.optional(
      branch(
        { list: z.array(weatherFile) },
        {
          description: 'Weathers to study; four of our choice when absent.',
          examples: ['- { name: winter design, outdoorTemperature: 5 F, wind: 12 mph from NW }'],
        },
      ),
    ),
  },
  {
    description: 'A house, for what its exhaust equipment does to its air.',
    example: 'evendraft: 1',
  },
);
