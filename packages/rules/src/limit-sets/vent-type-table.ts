import type { Source } from '@evendraft/house';
import { allExhaustTest } from '../internal/all-exhaust-test.js';
import { draftByWeather } from '../internal/draft-by-weather.js';
import type { LimitSet } from '../limit-set.js';

const table = {
  document: 'BPI Technical Standards, Heating Professional and Building Analyst Professional',
  section: 'CAZ Depressurization Limits',
} satisfies Omit<Source, 'status'>;
const restated: Source = { ...table, status: 'found second-hand' };
const recalled: Source = { ...table, status: 'memory' };
const actions: Source = {
  document: 'BPI Technical Standards',
  section: 'combustion-safety action table, carbon monoxide in the flue',
  status: 'memory',
};

/**
 * Limits of the combustion zone by vent type, alone or on a common vent.
 *
 * Source: BPI Technical Standards, "CAZ Depressurization Limits"; read in texts that restate it,
 * three rows from memory.
 */
export const ventTypeTable: LimitSet = {
  evendraftLimits: 1,
  id: 'vent-type-table',
  name: 'Combustion-zone limits by vent type',
  edition: '2026-11',
  document: table.document,
  editionOfDocument:
    'editions before ANSI/BPI-1200-S-2015; exact year not stated where it was read',
  region: 'United States',
  summary:
    'Largest fall of the combustion zone below its baseline, by kind of appliance, vent and whether the vent is shared.',
  note: 'The later standard ANSI/BPI-1200-S dropped depressurization and draft limits as criteria and kept tests of spillage and carbon monoxide.',
  testSetUp:
    'Base pressure of the zone with every fan off; then the dryer and all exhaust fans on, interior doors shut where that makes the zone more negative, the air handler on only if it makes it worse; the base pressure is subtracted.',
  testConfigurations: [allExhaustTest(restated)],
  limits: [
    {
      id: 'water-heater-alone',
      condition: 'Natural-draft water heater alone on its vent (orphaned)',
      limitPa: -2,
      quantity: 'change from baseline',
      applies: [{ kinds: ['water heater'], vents: ['natural draft'], alone: true }],
      source: restated,
    },
    {
      id: 'natural-draft-common-vent',
      condition: 'Natural-draft boiler or furnace commonly vented with a water heater',
      limitPa: -3,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['boiler', 'furnace'],
          vents: ['natural draft'],
          sharesVentWith: { kinds: ['water heater'] },
        },
        {
          kinds: ['water heater'],
          vents: ['natural draft'],
          sharesVentWith: { kinds: ['boiler', 'furnace'], vents: ['natural draft'] },
        },
      ],
      source: restated,
    },
    {
      id: 'natural-draft-vent-damper-common-vent',
      condition:
        'Natural-draft boiler or furnace with vent damper, commonly vented with a water heater',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['boiler', 'furnace'],
          vents: ['natural draft'],
          ventDamper: true,
          sharesVentWith: { kinds: ['water heater'] },
        },
        {
          kinds: ['water heater'],
          vents: ['natural draft'],
          sharesVentWith: {
            kinds: ['boiler', 'furnace'],
            vents: ['natural draft'],
            ventDamper: true,
          },
        },
      ],
      source: restated,
    },
    {
      id: 'natural-draft-boiler-furnace-alone',
      condition: 'Individual natural-draft boiler or furnace',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [{ kinds: ['boiler', 'furnace'], vents: ['natural draft'], alone: true }],
      source: restated,
    },
    {
      id: 'induced-draft-common-vent',
      condition: 'Induced-draft boiler or furnace commonly vented with a water heater',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['boiler', 'furnace'],
          vents: ['induced draft', 'fan assisted'],
          sharesVentWith: { kinds: ['water heater'] },
        },
        {
          kinds: ['water heater'],
          vents: ['natural draft', 'fan assisted'],
          sharesVentWith: {
            kinds: ['boiler', 'furnace'],
            vents: ['induced draft', 'fan assisted'],
          },
        },
      ],
      source: restated,
    },
    {
      id: 'power-vented-boiler-furnace-alone',
      condition: 'Power-vented boiler or furnace alone',
      limitPa: -15,
      quantity: 'change from baseline',
      applies: [{ kinds: ['boiler', 'furnace'], vents: ['power vented'], alone: true }],
      source: restated,
    },
    {
      id: 'induced-draft-boiler-furnace-alone',
      condition: 'Induced-draft boiler or furnace alone',
      limitPa: -15,
      quantity: 'change from baseline',
      applies: [
        { kinds: ['boiler', 'furnace'], vents: ['induced draft', 'fan assisted'], alone: true },
      ],
      source: recalled,
    },
    {
      id: 'fan-assisted-water-heater-alone',
      condition: 'Fan-assisted water heater alone',
      limitPa: -15,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['water heater'],
          vents: ['fan assisted', 'induced draft', 'power vented'],
          alone: true,
        },
      ],
      source: recalled,
      note: 'A water heater with an inducer or a power vent is read as fan-assisted (our choice).',
    },
    {
      id: 'direct-vent-sealed-combustion',
      condition: 'Direct-vent or sealed-combustion appliance',
      limitPa: -50,
      quantity: 'change from baseline',
      applies: [{ vents: ['direct vent', 'sealed combustion'] }],
      source: recalled,
      note: 'Printed as -25 Pa to -50 Pa for sealed combustion: the value differs between programmes, and the appliance maker may set a lower one.',
    },
  ],
  exclusions: [],
  draftLimits: [
    draftByWeather({
      document: 'BPI Technical Standards',
      section: 'Acceptable Draft Test Ranges',
      status: 'memory',
    }),
  ],
  spillageTimes: [
    {
      id: 'one-minute',
      condition: 'Spillage ends within 60 s of start-up',
      vent: 'either',
      limitS: 60,
      source: {
        document: 'BPI Technical Standards, Heating Professional',
        section: 'spillage test, as a test-procedure sheet restates it',
        status: 'found second-hand',
      },
    },
  ],
  ambientCo: [
    {
      id: 'end-of-tests',
      fromPpm: 35,
      action: 'Above it tests end: stop the appliance, ventilate, and find the source.',
      leave: false,
      source: {
        document: 'BPI Technical Standards',
        section: 'ambient carbon monoxide during tests',
        status: 'found second-hand',
      },
    },
  ],
  flueCo: [
    {
      id: 'tune',
      condition: 'From 26 ppm a tune-up is recommended',
      applies: [{}],
      limitPpm: 25,
      basis: 'as measured',
      source: actions,
    },
    {
      id: 'stop-and-repair',
      condition: 'From 100 ppm the work stops until it is repaired',
      applies: [{}],
      limitPpm: 100,
      basis: 'as measured',
      source: actions,
    },
    {
      id: 'emergency',
      condition: 'Above 400 ppm it is an emergency',
      applies: [{}],
      limitPpm: 400,
      basis: 'as measured',
      source: actions,
    },
  ],
};
