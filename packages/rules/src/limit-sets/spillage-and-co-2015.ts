import type { Source } from '@evendraft/house';
import { allExhaustTest } from '../internal/all-exhaust-test.js';
import type { LimitSet } from '../limit-set.js';

const standard = { document: 'ANSI/BPI-1200-S', edition: '2015 and 2017' };
const slides: Source = {
  ...standard,
  section: 'limits of depressurization and draft removed, as training slides say',
  status: 'found second-hand',
};
const recalled: Source = { ...standard, section: '7', status: 'memory' };

/**
 * The later standard without any limit of pressure or draft: spillage in time, and carbon monoxide.
 *
 * Source: ANSI/BPI-1200-S; that it dropped such limits was read in training slides, minutes and
 * levels are from memory.
 */
export const spillageAndCo2015: LimitSet = {
  evendraftLimits: 1,
  id: 'spillage-and-co-2015',
  name: 'Spillage and carbon monoxide, standard of 2015',
  edition: '2026-11',
  document: standard.document,
  editionOfDocument: standard.edition,
  region: 'United States',
  summary:
    'No limit of depressurization and none of draft: an appliance may spill for 2 minutes into a warm vent and 5 minutes into a cold one, and carbon monoxide in the room has three levels.',
  note: 'This programme dropped limits of depressurization and of draft. That it has none says nothing about how an appliance behaves.',
  testSetUp:
    'The house set up for its worst case with all exhaust on; spillage is watched from the start of the burner, and carbon monoxide measured.',
  testConfigurations: [allExhaustTest(slides)],
  limits: [],
  exclusions: [
    {
      id: 'no-pressure-limit',
      applies: [{}],
      reason:
        'This programme dropped limits of depressurization: it judges the time of spillage and carbon monoxide, which no pressure can stand for.',
      source: slides,
    },
  ],
  spillageTimes: [
    {
      id: 'warm-vent',
      condition: 'Spillage ends within 2 minutes of main burner, warm vent',
      vent: 'warm',
      limitS: 120,
      source: recalled,
    },
    {
      id: 'cold-vent',
      condition: 'Spillage ends within 5 minutes of main burner, cold vent',
      vent: 'cold',
      limitS: 300,
      source: recalled,
    },
  ],
  ambientCo: [
    {
      id: 'advise',
      fromPpm: 9,
      action: 'Tell the people who live there, ventilate, and look for the source.',
      leave: false,
      source: recalled,
    },
    {
      id: 'no-further-testing',
      fromPpm: 36,
      action: 'Ventilate; no further testing until it is resolved.',
      leave: false,
      source: recalled,
    },
    {
      id: 'evacuate',
      fromPpm: 70,
      action: 'Everyone leaves; call the emergency or gas service from outdoors.',
      leave: true,
      source: recalled,
    },
  ],
};
