import type { Source } from '@evendraft/house';
import type { LimitSet } from '../limit-set.js';

const restated: Source = {
  document: 'FeuVO, DIN 1946-6, DVGW-TRGI',
  section: 'largest negative pressure of a dwelling with hearths, as chimney sweeps restate it',
  status: 'found second-hand',
};

/**
 * The German rule of 4 Pa for appliances that take their air from the room, and 8 Pa for those that do not.
 *
 * Source: FeuVO practice, DIN 1946-6 and DVGW-TRGI, read on three pages of chimney sweeps that
 * restate them.
 */
export const germany4Pa: LimitSet = {
  evendraftLimits: 1,
  id: 'germany-4-pa',
  name: 'German 4 Pa and 8 Pa rule',
  edition: '2026-11',
  document: restated.document,
  editionOfDocument: 'not stated where it was read',
  region: 'Germany',
  summary:
    'Largest negative pressure of a dwelling: 4 Pa (0.04 mbar) with appliances that depend on room air, usually 8 Pa with appliances that do not.',
  note: 'FeuVO section 4 also accepts other ways: exhaust and hearth kept from running together, the discharge of flue gas monitored, or flue gas removed by the extract system. The district chimney sweep decides. The limit is read as the pressure of the zone against outdoors (our choice).',
  testSetUp:
    'Strongest extraction on and the appliance running; the pressure of the room against outdoors recorded for 5 minutes.',
  testConfigurations: [
    {
      id: 'strongest-extraction',
      words: 'Extraction at its strongest, the appliance running, for 5 minutes.',
      exhaust: 'all',
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'all',
      baseline: 'nothing is subtracted',
      source: restated,
    },
  ],
  limits: [
    {
      id: 'room-air-dependent',
      condition: 'Appliance that takes its combustion air from the room (room-air-dependent)',
      limitPa: -4,
      quantity: 'zone minus outdoors',
      applies: [
        {
          vents: [
            'natural draft',
            'fan assisted',
            'induced draft',
            'power vented',
            'open hearth',
            'closed stove',
          ],
        },
      ],
      source: restated,
    },
    {
      id: 'room-air-independent',
      condition:
        'Appliance that takes its combustion air from outdoors (room-air-independent), usual limit',
      limitPa: -8,
      quantity: 'zone minus outdoors',
      applies: [{ vents: ['direct vent', 'sealed combustion'] }],
      source: restated,
      note: 'The usual value; the approval of the appliance may set another.',
    },
  ],
  exclusions: [],
};
