import type { Source } from '@evendraft/house';

/** What a cure changes; a cure of one kind can be re-solved in one way. */
export type CureKind = (typeof cureKinds)[number];

/** Every kind of cure. */
export const cureKinds = [
  'exhaust without air',
  'remove exhaust',
  'balance the ventilator',
  'cap the speed',
  'interlock',
  'make-up air',
  'more or calmer air at the hood',
  'close high openings',
  'air of its own',
  'separate the zone',
  'repair the vent',
  'sealed appliance',
  'relieve the pressure',
  'seal the wall',
  'hold the ground lower',
] as const;

/** What a finding is about, as far as its cures go. */
export type CuredFinding =
  | 'depressurization'
  | 'draft or spillage'
  | 'carbon monoxide'
  | 'make-up air missing'
  | 'combustion air missing'
  | 'hood capture'
  | 'overpressure'
  | 'soil gas'
  | 'garage'
  | 'door force';

/** The order in which cures are tried, for one kind of finding. */
export interface CureOrder {
  /** What to do at once, before any cure; empty where nothing presses. */
  readonly atOnce: readonly string[];
  readonly order: readonly CureKind[];
}

/** How sure the order is. */
export const cureOrderSource: Source = {
  document: 'common practice',
  status: 'common practice, no source',
};

const spillingNow =
  'While it spills or an alarm sounds: stop the appliance, open doors and windows, leave, and call the emergency or gas service from outdoors.';

/**
 * The usual order of cures for each kind of finding: first what takes the cause away, last what is rebuilt.
 *
 * Common practice, no source. What a cure does is known only once the house is solved with it.
 */
export const cureOrders: Readonly<Record<CuredFinding, CureOrder>> = {
  depressurization: {
    atOnce: [],
    order: [
      'exhaust without air',
      'remove exhaust',
      'balance the ventilator',
      'cap the speed',
      'interlock',
      'make-up air',
      'close high openings',
      'separate the zone',
      'sealed appliance',
    ],
  },
  'draft or spillage': {
    atOnce: [spillingNow],
    order: [
      'exhaust without air',
      'remove exhaust',
      'balance the ventilator',
      'cap the speed',
      'interlock',
      'repair the vent',
      'make-up air',
      'separate the zone',
      'sealed appliance',
    ],
  },
  'carbon monoxide': {
    atOnce: [spillingNow],
    order: ['repair the vent', 'interlock', 'make-up air', 'sealed appliance'],
  },
  'make-up air missing': {
    atOnce: [],
    order: ['remove exhaust', 'cap the speed', 'make-up air', 'sealed appliance'],
  },
  'combustion air missing': {
    atOnce: [],
    order: ['air of its own', 'make-up air', 'separate the zone', 'sealed appliance'],
  },
  'hood capture': {
    atOnce: [],
    order: ['make-up air', 'more or calmer air at the hood'],
  },
  overpressure: {
    atOnce: [],
    order: ['balance the ventilator', 'cap the speed', 'relieve the pressure'],
  },
  'soil gas': {
    atOnce: [],
    order: ['cap the speed', 'make-up air', 'seal the wall', 'hold the ground lower'],
  },
  garage: {
    atOnce: [],
    order: ['seal the wall', 'cap the speed', 'make-up air'],
  },
  'door force': {
    atOnce: [],
    order: ['cap the speed', 'make-up air', 'relieve the pressure'],
  },
};
