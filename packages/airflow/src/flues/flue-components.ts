import type { Provenance } from '../provenance.js';

/** Parts of a flue that cost draft. */
export type FlueComponentName =
  | 'draft hood'
  | 'barometric regulator'
  | 'direct connection'
  | 'elbow 90'
  | 'elbow 45'
  | 'tee'
  | 'wye'
  | 'open top'
  | 'low-resistance cap'
  | 'cap'
  | 'spark screen'
  | 'leaving velocity';

/** Loss of one part of a flue. */
export interface FlueComponent extends Provenance {
  /** Velocity pressures of the gas in the flue [-]. */
  readonly lossCoefficient: number;
  /** Between which values the coefficients of such parts lie, where they differ much [-]. */
  readonly range?: readonly [least: number, most: number];
}

const handbook = {
  source: 'ASHRAE Handbook HVAC Systems and Equipment, chapter 35, resistance of vent components',
  status: 'memory',
} as const;

/**
 * Loss coefficients of the parts of a flue [-].
 *
 * The handbook counts the velocity that the gas gets as a loss of its inlet: 1.5 for a draft hood is 0.5 for the entry
 * and 1 for the velocity. A direct connection counts nothing, because the appliance gives the velocity; where it does
 * not, as at an open hearth or a cold flue, the leaving velocity is to be added.
 */
export const flueComponents: Readonly<Record<FlueComponentName, FlueComponent>> = Object.freeze({
  'draft hood': { lossCoefficient: 1.5, ...handbook },
  'barometric regulator': { lossCoefficient: 0.5, ...handbook },
  'direct connection': { lossCoefficient: 0, ...handbook },
  'elbow 90': { lossCoefficient: 0.75, ...handbook },
  'elbow 45': { lossCoefficient: 0.3, ...handbook },
  tee: { lossCoefficient: 1.25, ...handbook },
  wye: { lossCoefficient: 0.75, ...handbook },
  'open top': { lossCoefficient: 0, ...handbook },
  'low-resistance cap': { lossCoefficient: 0.5, ...handbook },
  cap: {
    lossCoefficient: 3,
    range: [1.5, 4.5],
    source: `${handbook.source}: other caps 1.5 to 4.5; the middle is taken`,
    status: 'memory',
  },
  'spark screen': { lossCoefficient: 0.5, ...handbook },
  'leaving velocity': {
    lossCoefficient: 1,
    source: 'the velocity pressure that leaves with the gas',
    status: 'derived',
  },
});
