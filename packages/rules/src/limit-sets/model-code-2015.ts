import type { Source } from '@evendraft/house';
import { allExhaustTest } from '../internal/all-exhaust-test.js';
import { draftByWeather } from '../internal/draft-by-weather.js';
import type { LimitSet } from '../limit-set.js';

const recalled: Source = {
  document: 'International Residential Code; International Energy Conservation Code',
  edition: '2015',
  section: 'IRC Appendix T; IECC Appendix RA',
  status: 'memory',
};

/**
 * Limits of the combustion zone in the words of a model code's appendix, by vent category.
 *
 * Source: IRC 2015 Appendix T and IECC 2015 Appendix RA, "Recommended procedure for worst-case testing
 * of atmospheric venting systems"; the title was found, the values are from memory.
 */
export const modelCode2015: LimitSet = {
  evendraftLimits: 1,
  id: 'model-code-2015',
  name: 'Combustion-zone limits of a model-code appendix of 2015',
  edition: '2026-11',
  document:
    'IRC Appendix T and IECC Appendix RA, Recommended procedure for worst-case testing of atmospheric venting systems',
  editionOfDocument: '2015',
  region: 'United States',
  summary:
    'The limits by vent type as an appendix to a model code gives them, with vent categories and a row for decorative vented gas appliances; written for dwellings of 5 air changes per hour at 50 Pa or tighter.',
  note: 'An appendix binds only where a jurisdiction adopted it; from memory, it is no longer among the appendices of the 2018 residential code.',
  testSetUp:
    'Base pressure of the zone with every fan off; then the dryer and all exhaust fans on, interior doors shut where that makes the zone more negative, the air handler on only if it makes it worse; the base pressure is subtracted.',
  testConfigurations: [allExhaustTest(recalled)],
  limits: [
    {
      id: 'category-1-water-heater',
      condition: 'Category I atmospherically vented water heater',
      limitPa: -2,
      quantity: 'change from baseline',
      applies: [{ kinds: ['water heater'], vents: ['natural draft'] }],
      source: recalled,
    },
    {
      id: 'category-1-common-vent',
      condition:
        'Category I boiler or furnace commonly vented with a Category I atmospherically vented water heater',
      limitPa: -3,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['boiler', 'furnace'],
          vents: ['natural draft'],
          sharesVentWith: { kinds: ['water heater'], vents: ['natural draft'] },
        },
        {
          kinds: ['water heater'],
          vents: ['natural draft'],
          sharesVentWith: { kinds: ['boiler', 'furnace'], vents: ['natural draft'] },
        },
      ],
      source: recalled,
    },
    {
      id: 'category-1-flue-damper-common-vent',
      condition:
        'Category I boiler or furnace with flue damper, commonly vented with a Category I atmospherically vented water heater',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['boiler', 'furnace'],
          vents: ['natural draft'],
          ventDamper: true,
          sharesVentWith: { kinds: ['water heater'], vents: ['natural draft'] },
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
      source: recalled,
    },
    {
      id: 'category-1-boiler-furnace-alone',
      condition: 'Category I atmospherically vented boiler or furnace alone',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [{ kinds: ['boiler', 'furnace'], vents: ['natural draft'], alone: true }],
      source: recalled,
    },
    {
      id: 'category-1-fan-assisted-common-vent',
      condition:
        'Category I fan-assisted boiler or furnace commonly vented with an atmospherically vented water heater',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['boiler', 'furnace'],
          vents: ['fan assisted', 'induced draft'],
          sharesVentWith: { kinds: ['water heater'], vents: ['natural draft'] },
        },
        {
          kinds: ['water heater'],
          vents: ['natural draft'],
          sharesVentWith: {
            kinds: ['boiler', 'furnace'],
            vents: ['fan assisted', 'induced draft'],
          },
        },
      ],
      source: recalled,
    },
    {
      id: 'decorative-gas-appliance',
      condition: 'Decorative vented gas appliance',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [{ kinds: ['decorative gas appliance'], vents: ['natural draft', 'open hearth'] }],
      source: recalled,
    },
    {
      id: 'power-vented-boiler-furnace-alone',
      condition: 'Power-vented or induced-draft boiler or furnace alone',
      limitPa: -15,
      quantity: 'change from baseline',
      applies: [
        {
          kinds: ['boiler', 'furnace'],
          vents: ['power vented', 'induced draft', 'fan assisted'],
          alone: true,
        },
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
      id: 'category-4-direct-vent',
      condition: 'Category IV direct-vent or sealed-combustion appliance',
      limitPa: -50,
      quantity: 'change from baseline',
      applies: [{ vents: ['direct vent', 'sealed combustion'] }],
      source: recalled,
    },
  ],
  exclusions: [],
  draftLimits: [
    draftByWeather({
      document: 'International Energy Conservation Code',
      edition: '2015',
      section: 'Appendix RA',
      status: 'memory',
    }),
  ],
};
