import type { Source } from '@evendraft/house';
import { allExhaustTest } from '../internal/all-exhaust-test.js';
import type { LimitSet } from '../limit-set.js';

const recalled: Source = {
  document: 'RESNET Interim Guidelines for Combustion Appliance Testing',
  edition: '2010',
  section: '807',
  status: 'memory',
};

/**
 * An interim guideline for energy raters: 5 Pa for atmospheric vents, 15 Pa for pellet stoves.
 *
 * Source: RESNET interim guidelines, 2010, section 807; from memory, the title included.
 */
export const raterGuideline2010: LimitSet = {
  evendraftLimits: 1,
  id: 'rater-guideline-2010',
  name: 'Interim guideline for energy raters of 2010',
  edition: '2026-11',
  document: recalled.document,
  editionOfDocument: '2010',
  region: 'United States',
  summary:
    'Two limits: 5 Pa for atmospherically vented appliances, 15 Pa for pellet stoves with exhaust fan and sealed vent.',
  note: 'An interim guideline; raters have since been referred to ANSI/ACCA 12 QH, Appendix A, for combustion-zone pressure and carbon monoxide.',
  testSetUp:
    'Base pressure of the zone with every fan off; then the dryer and all exhaust fans on, interior doors shut where that makes the zone more negative, the air handler on only if it makes it worse; the base pressure is subtracted.',
  testConfigurations: [allExhaustTest(recalled)],
  limits: [
    {
      id: 'atmospheric',
      condition: 'Atmospherically vented appliance',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [{ vents: ['natural draft'] }],
      source: recalled,
    },
    {
      id: 'pellet-stove',
      condition: 'Pellet stove with exhaust fan and sealed vent',
      limitPa: -15,
      quantity: 'change from baseline',
      applies: [{ vents: ['power vented', 'induced draft'], fuels: ['pellets'] }],
      source: recalled,
    },
  ],
  exclusions: [],
};
