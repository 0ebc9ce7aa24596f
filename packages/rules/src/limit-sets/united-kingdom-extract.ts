import type { Source } from '@evendraft/house';
import { siOf } from '../internal/si-of.js';
import type { LimitSet } from '../limit-set.js';

const ventilation: Source = {
  document: 'Approved Document F',
  edition: '1995, year inferred',
  section: '1.8',
  status: 'found',
};
const combustion: Source = {
  document: 'Approved Document J',
  section: '1.20 to 1.22',
  status: 'memory',
};

/**
 * British rates of extract beside open-flued appliances, instead of a limit of pressure.
 *
 * Source: Approved Document F, 1995, 1.8, read; Approved Document J, 1.20 to 1.22, from memory.
 */
export const unitedKingdomExtract: LimitSet = {
  evendraftLimits: 1,
  id: 'united-kingdom-extract',
  name: 'British rates of extract beside open flues',
  edition: '2026-11',
  document: 'Approved Documents F and J',
  editionOfDocument: 'F 1995 (year inferred); J not stated',
  region: 'United Kingdom',
  summary:
    'Largest extract beside open-flued appliances: 20 L/s with gas, 40 L/s with a pressure-jet and 20 L/s with a vaporising oil burner, none in the room of a solid-fuel appliance.',
  note: 'Rates, not pressures. A spillage test (BS 5440-1) is asked for whether or not fan and appliance share a room, and extract is cut where it spills.',
  testSetUp:
    'Extract fans at their highest rate, doors and windows shut, the appliance firing; spillage is looked for at the draught diverter.',
  testConfigurations: [
    {
      id: 'all-exhaust-doors-shut',
      words: 'All extract at its highest rate, doors shut, the appliance firing.',
      exhaust: 'all',
      doors: 'all shut',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'each alone, then all',
      baseline: 'nothing is subtracted',
      source: {
        document: 'BS 5440-1',
        section: 'spillage test, as Approved Document F calls for it',
        status: 'memory',
      },
    },
  ],
  limits: [],
  exclusions: [
    {
      id: 'no-pressure-limit',
      applies: [{}],
      reason:
        'The British rules limit the rate of extract and ask for a spillage test; they have no limit of pressure.',
      source: ventilation,
    },
  ],
  extractLimits: [
    {
      id: 'open-flued-gas-same-room',
      condition: 'Open-flued gas appliance with the extract fan in the same room',
      applies: [
        {
          vents: ['natural draft', 'fan assisted', 'induced draft', 'open hearth'],
          fuels: ['gas'],
        },
      ],
      sameRoom: true,
      largestFlowM3PerS: siOf('20 L/s', 'volumeFlow'),
      source: ventilation,
      note: 'The document says it of kitchens; it is read here for the appliance’s own zone (our choice).',
    },
    {
      id: 'solid-fuel-same-room',
      condition: 'Solid-fuel appliance: no mechanical extract in the same room',
      applies: [{ fuels: ['wood', 'pellets'] }],
      sameRoom: true,
      largestFlowM3PerS: 0,
      source: ventilation,
    },
    {
      id: 'open-flued-oil-pressure-jet',
      condition: 'Open-flued oil appliance with a pressure-jet burner',
      applies: [{ fuels: ['oil'], vents: ['fan assisted', 'induced draft'] }],
      sameRoom: true,
      largestFlowM3PerS: siOf('40 L/s', 'volumeFlow'),
      source: combustion,
      note: 'A fan-assisted oil appliance is read as a pressure jet (our choice).',
    },
    {
      id: 'open-flued-oil-vaporising',
      condition: 'Open-flued oil appliance with a vaporising burner',
      applies: [{ fuels: ['oil'], vents: ['natural draft', 'closed stove'] }],
      sameRoom: true,
      largestFlowM3PerS: siOf('20 L/s', 'volumeFlow'),
      source: combustion,
      note: 'An oil appliance without a fan is read as vaporising, the stricter row (our choice): a pressure jet may have 40 L/s.',
    },
  ],
};
