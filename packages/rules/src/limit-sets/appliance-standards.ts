import type { Source } from '@evendraft/house';
import { siOf } from '../internal/si-of.js';
import type { LimitSet } from '../limit-set.js';

const switches: Source = {
  document: 'appliance standards for spill switches',
  section: 'as a page of a seller of instruments tells them',
  status: 'found second-hand',
};
const furnaces: Source = {
  document: 'ANSI Z21.47',
  edition: '1998',
  section: 'blocked-vent test, as a general page tells it',
  status: 'found second-hand',
};
const outdoorAir: Source = {
  document: 'US National Ambient Air Quality Standards',
  section: 'carbon monoxide, 8 hours and 1 hour',
  status: 'found second-hand',
};

/**
 * What appliances are built to and what outdoor air may hold: marks for orientation, no limit of a house.
 *
 * Source: appliance standards and the US standard for outdoor air, each read in a text that restates it.
 */
export const applianceStandards: LimitSet = {
  evendraftLimits: 1,
  id: 'appliance-standards',
  name: 'Marks of appliance and outdoor-air standards',
  edition: '2026-11',
  document: 'appliance standards; US National Ambient Air Quality Standards',
  editionOfDocument: '1998 for furnaces; not stated for the others where they were read',
  region: 'United States',
  summary:
    'A vent is given 5 minutes to draw from cold, a spill switch trips within 10; a furnace with a blocked vent makes no more than 400 ppm air-free; outdoor air holds no more than 9 ppm over 8 hours and 35 ppm over 1 hour.',
  note: 'What a new appliance is tested to in a laboratory is no limit of an old one in a house.',
  testSetUp: 'The laboratory’s own; in a house, every fan off.',
  testConfigurations: [
    {
      id: 'everything-off',
      words: 'Every fan off, as in a laboratory.',
      exhaust: 'none',
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'off',
      firing: 'each alone, then all',
      baseline: 'nothing is subtracted',
      source: switches,
    },
  ],
  limits: [],
  exclusions: [
    {
      id: 'no-pressure-limit',
      applies: [{}],
      reason:
        'These standards are of appliances and of outdoor air; they have no limit of pressure.',
      source: switches,
    },
  ],
  spillageTimes: [
    {
      id: 'draft-from-cold',
      condition: 'Time allowed to prove draft from cold',
      vent: 'cold',
      limitS: siOf('5 min', 'time'),
      source: switches,
    },
    {
      id: 'spill-switch',
      condition: 'Time within which a spill switch trips',
      vent: 'either',
      limitS: siOf('10 min', 'time'),
      source: switches,
    },
  ],
  ambientCo: [
    {
      id: 'outdoor-air-8-hours',
      fromPpm: 9,
      action: 'More than outdoor air may hold over 8 hours: look for the source.',
      leave: false,
      source: outdoorAir,
    },
    {
      id: 'outdoor-air-1-hour',
      fromPpm: 35,
      action: 'More than outdoor air may hold over 1 hour: stop the appliance and ventilate.',
      leave: false,
      source: outdoorAir,
    },
  ],
  flueCo: [
    {
      id: 'furnace-blocked-vent',
      condition: 'Furnace in the blocked-vent test of its standard',
      applies: [{ kinds: ['furnace'] }],
      limitPpm: 400,
      basis: 'air-free',
      source: furnaces,
    },
  ],
};
