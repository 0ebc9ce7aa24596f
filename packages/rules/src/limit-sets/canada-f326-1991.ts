import type { Source } from '@evendraft/house';
import type { AppliesTo } from '../applies-to.js';
import type { LimitSet } from '../limit-set.js';

const recalled: Source = {
  document: 'CSA F326-M91',
  edition: '1991',
  section: 'depressurization by the ventilation system; clause not recalled',
  status: 'memory',
};

/** Appliances whose gas suction can pull back into the house. */
const prone: readonly AppliesTo[] = [
  { vents: ['natural draft', 'fan assisted', 'induced draft', 'open hearth', 'closed stove'] },
];
const unsure = 'From uncertain memory: compare it with the standard before relying on it.';

/**
 * The Canadian ventilation standard of 1991: 5, 10 and 20 Pa by condition.
 *
 * Source: CSA F326-M91, from uncertain memory.
 */
export const canadaF3261991: LimitSet = {
  evendraftLimits: 1,
  id: 'canada-f326-1991',
  name: 'Canadian ventilation standard of 1991',
  edition: '2026-11',
  document: recalled.document,
  editionOfDocument: '1991',
  region: 'Canada',
  summary:
    '5 Pa with spillage-prone appliances; without them 10 Pa while ventilation runs continuously, and never more than 20 Pa.',
  note: unsure,
  testSetUp:
    'Ventilation running continuously, with every other fan off, for the limit of continuous operation; all exhaust on for the others; the pressure with every fan off is subtracted.',
  testConfigurations: [
    {
      id: 'continuous-ventilation',
      words: 'Only the ventilation that runs continuously.',
      exhaust: 'continuous only',
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'nothing',
      baseline: 'everything off, same doors',
      source: recalled,
    },
    {
      id: 'all-exhaust',
      words: 'All exhaust on.',
      exhaust: 'all',
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'nothing',
      baseline: 'everything off, same doors',
      source: recalled,
    },
  ],
  limits: [
    {
      id: 'spillage-prone',
      condition: 'Spillage-prone appliance',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: prone,
      source: recalled,
      note: unsure,
    },
  ],
  exclusions: [],
  houseLimits: [
    {
      id: 'continuous',
      condition: 'House without spillage-prone appliances, continuous ventilation',
      limitPa: -10,
      quantity: 'change from baseline',
      ifNoneOf: prone,
      configuration: 'continuous-ventilation',
      source: recalled,
      note: unsure,
    },
    {
      id: 'ceiling',
      condition: 'House without spillage-prone appliances, all exhaust on',
      limitPa: -20,
      quantity: 'change from baseline',
      ifNoneOf: prone,
      configuration: 'all-exhaust',
      source: recalled,
      note: unsure,
    },
  ],
};
