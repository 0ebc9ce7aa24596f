import type { Source } from '@evendraft/house';
import { allExhaustTest } from '../internal/all-exhaust-test.js';
import type { LimitSet } from '../limit-set.js';

const manual = { document: 'National oilheat research manual', status: 'found' } as const;
const breech: Source = { ...manual, section: 'chapter 6, page 43' };

/**
 * Draft at the breech of oil appliances, and carbon monoxide in the room.
 *
 * Source: a national oilheat research manual, chapter 6, read.
 */
export const oilHeatManual: LimitSet = {
  evendraftLimits: 1,
  id: 'oil-heat-manual',
  name: 'Draft of oil appliances',
  edition: '2026-11',
  document: manual.document,
  editionOfDocument: 'not stated where it was read',
  region: 'United States',
  summary:
    'Draft at the breech of an oil appliance from 2.5 to 5 Pa in steady firing; tests end above 35 ppm of carbon monoxide in the room. No limit of depressurization.',
  note: 'A setting for technicians rather than a limit of the house; the appliance maker’s figure stands above it.',
  testSetUp: 'All exhaust on, the appliance firing for 5 to 10 minutes until its draft is steady.',
  testConfigurations: [allExhaustTest(breech)],
  limits: [],
  exclusions: [
    {
      id: 'no-pressure-limit',
      applies: [{}],
      reason: 'The manual has a draft at the breech and no limit of depressurization.',
      source: breech,
    },
  ],
  draftLimits: [
    {
      id: 'oil-breech',
      condition: 'Oil appliance, steady state after 5 to 10 minutes',
      applies: [{ fuels: ['oil'], vents: ['natural draft', 'fan assisted', 'induced draft'] }],
      place: 'at the breech, against the zone',
      corners: [{ outdoorTemperatureC: 0, draftPa: -2.5 }],
      strongestPa: -5,
      source: breech,
    },
  ],
  ambientCo: [
    {
      id: 'end-of-tests',
      fromPpm: 35,
      action: 'Above it tests end: stop the appliance, ventilate, and find the source.',
      leave: false,
      source: { ...manual, section: 'page 41' },
    },
  ],
};
