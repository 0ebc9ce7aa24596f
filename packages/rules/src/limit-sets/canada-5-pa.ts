import type { Source } from '@evendraft/house';
import { siOf } from '../internal/si-of.js';
import type { AppliesTo } from '../applies-to.js';
import type { LimitSet } from '../limit-set.js';

const ventSizing: Source = {
  document: 'CSA B149.1',
  section: 'prerequisites of vent sizing, as a course text for gas technicians restates them',
  status: 'found second-hand',
};
const depressurizationTest: Source = {
  document: 'CSA F300',
  section: 'description of the test, as a course text for gas technicians restates it',
  status: 'found second-hand',
};
const prefaceOf2022: Source = {
  document: 'CSA F300',
  edition: '2022',
  section: 'preface, items b, d and e',
  status: 'found',
};

/** Appliances other than solid fuel whose gas suction can pull back into the house. */
const prone: readonly AppliesTo[] = [
  {
    vents: ['natural draft', 'fan assisted', 'induced draft', 'open hearth'],
    fuels: ['gas', 'oil'],
  },
];

/**
 * The Canadian 5 Pa rule for vented appliances that take their air from the house.
 *
 * Source: CSA B149.1 and CSA F300, read in a course text that restates them; what F300:22 changed,
 * in its preface.
 */
export const canada5Pa: LimitSet = {
  evendraftLimits: 1,
  id: 'canada-5-pa',
  name: 'Canadian 5 Pa rule',
  edition: '2026-11',
  document: 'CSA B149.1 and CSA F300',
  editionOfDocument: 'not stated where the limits were read; F300:22 for solid fuel',
  region: 'Canada',
  summary:
    'One limit of 5 Pa (0.02 in. w.c.) for fuel-fired vented appliances that are not direct-vent, whatever their kind.',
  note: 'Codes of the provinces decide; with solid fuel or with spillage-prone appliances they ask for make-up air by rules of their own, which are not judged here.',
  testSetUp:
    'Rest pressure with every fan off, against a tap outdoors at least 3 m from the house; then exhaust added in steps (foundation fans, required ventilation, dryer and all larger exhausts); the last reading less the rest pressure.',
  testConfigurations: [
    {
      id: 'dryer-and-large-exhaust',
      words:
        'Foundation fans, required ventilation, dryer and all exhaust above 75 L/s, added in steps.',
      exhaust: 'dryers and larger',
      largerThanM3PerS: siOf('75 L/s', 'volumeFlow'),
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'nothing',
      baseline: 'everything off, same doors',
      source: depressurizationTest,
    },
    {
      id: 'all-exhaust',
      words: 'All exhaust, as the edition of 2022 counts it.',
      exhaust: 'all',
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'nothing',
      baseline: 'everything off, same doors',
      source: { ...prefaceOf2022, section: 'preface, item f' },
    },
    {
      id: 'continuous-ventilation',
      words: 'Only the ventilation that runs continuously.',
      exhaust: 'continuous only',
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'nothing',
      baseline: 'everything off, same doors',
      source: { ...prefaceOf2022, section: 'preface, item d' },
    },
  ],
  limits: [
    {
      id: 'draft-hood-and-fan-assisted',
      condition:
        'Gas appliance with draft hood or fan-assisted: house depressurization above which the vent tables may not be used',
      limitPa: -5,
      quantity: 'change from baseline',
      applies: [{ vents: ['natural draft', 'fan assisted', 'induced draft'], fuels: ['gas'] }],
      source: ventSizing,
    },
    {
      id: 'vented-not-direct-vent',
      condition: 'Any fuel-fired vented appliance that is not direct-vent, in all conditions',
      limitPa: -5,
      quantity: 'change from baseline',
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
          fuels: ['gas', 'oil'],
        },
      ],
      source: depressurizationTest,
    },
  ],
  exclusions: [
    {
      id: 'solid-fuel',
      applies: [{ fuels: ['wood', 'pellets'] }, { kinds: ['wood stove'] }],
      reason:
        'CSA F300:22 removed the 5 Pa limit for solid-fuel appliances and asks for a carbon monoxide alarm instead; this set has no pressure limit for them.',
      source: prefaceOf2022,
    },
    {
      id: 'direct-vent',
      applies: [{ vents: ['direct vent', 'sealed combustion'] }],
      reason:
        'The 5 Pa rule is for appliances that are not direct-vent. CSA F300:22 has limits of 10 Pa and 25 Pa for a whole house without spillage-prone equipment, at test conditions of its own; they are limits of the house and not of the appliance.',
      source: prefaceOf2022,
    },
  ],
  houseLimits: [
    {
      id: 'continuous-ventilation',
      condition:
        'House without non-solid-fuel spillage-susceptible equipment, at the condition of continuous ventilation',
      limitPa: -10,
      quantity: 'change from baseline',
      ifNoneOf: prone,
      configuration: 'continuous-ventilation',
      source: { ...prefaceOf2022, section: 'preface, item d' },
    },
    {
      id: 'depressurization-test',
      condition:
        'House without spillage-susceptible equipment, at the depressurization test condition',
      limitPa: -25,
      quantity: 'change from baseline',
      ifNoneOf: prone,
      configuration: 'all-exhaust',
      source: { ...prefaceOf2022, section: 'preface, item e' },
      note: 'The wording of the preface is garbled where it says which houses are meant; it is read as houses without spillage-susceptible equipment (our choice).',
    },
  ],
};
