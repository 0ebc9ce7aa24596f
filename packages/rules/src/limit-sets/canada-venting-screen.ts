import type { Source } from '@evendraft/house';
import { siOf } from '../internal/si-of.js';
import type { LimitSet } from '../limit-set.js';

const restated: Source = {
  document: 'CMHC combustion venting procedure',
  section: 'basic venting test, as a course text for gas technicians restates it',
  status: 'found second-hand',
};

/**
 * The Canadian basic venting test: spillage ends within 30 seconds. No limit of pressure.
 *
 * Source: CMHC procedure, read in a course text that restates it.
 */
export const canadaVentingScreen: LimitSet = {
  evendraftLimits: 1,
  id: 'canada-venting-screen',
  name: 'Canadian basic venting test',
  edition: '2026-11',
  document: restated.document,
  editionOfDocument: 'not stated where it was read',
  region: 'Canada',
  summary: 'Spillage ends within 30 seconds with the exhaust running. No limit of pressure.',
  note: 'Which houses need the test at all is a screen of its own: a tight house above 75 L/s of exhaust or with a wood fireplace, another house above 125 L/s.',
  testSetUp:
    'Rest with every fan off; dryer and all exhaust above 75 L/s on; the appliance fires and spillage is timed.',
  testConfigurations: [
    {
      id: 'dryer-and-large-exhaust',
      words: 'Dryers and all exhaust above 75 L/s.',
      exhaust: 'dryers and larger',
      largerThanM3PerS: siOf('75 L/s', 'volumeFlow'),
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'each alone, then all',
      baseline: 'everything off, same doors',
      source: restated,
    },
  ],
  limits: [],
  exclusions: [
    {
      id: 'no-pressure-limit',
      applies: [{}],
      reason: 'The basic venting test times spillage; it has no limit of pressure.',
      source: restated,
    },
  ],
  spillageTimes: [
    {
      id: 'thirty-seconds',
      condition: 'Spillage ends within 30 seconds',
      vent: 'either',
      limitS: 30,
      source: restated,
    },
  ],
};
