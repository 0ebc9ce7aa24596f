import type { Provenance } from '../provenance.js';

/** How much buildings around a house keep the wind off it. */
export type Shelter = 'exposed' | 'half height' | 'equal height';

/** Wind pressure coefficients of one surface of a low building of square plan. */
export interface LowRiseCoefficients extends Provenance {
  /** Coefficients at 0, 45, 90, 135 and 180° from the outward normal [-], by shelter. */
  readonly byShelter: Readonly<Record<Shelter, readonly [number, number, number, number, number]>>;
}

const source =
  'AIVC Technical Note 44 (Orme, Liddament and Wilson, 1994), low-rise buildings of up to three storeys, plan 1:1';

/**
 * Wall of a low building of square plan: in the open, among buildings of half its height, and among
 * buildings of its own height.
 *
 * The stated accuracy of such tables is poor: use them to see how much wind matters.
 */
export const lowRiseWallCoefficients: LowRiseCoefficients = Object.freeze({
  byShelter: {
    exposed: [0.7, 0.35, -0.5, -0.4, -0.2],
    'half height': [0.4, 0.1, -0.3, -0.35, -0.2],
    'equal height': [0.2, 0.05, -0.25, -0.3, -0.25],
  },
  source,
  status: 'memory',
} as const);

/**
 * Roof of 11 to 30° pitch of a low building of square plan. Incidence is from the direction across
 * the ridge; both slopes have the same coefficients.
 */
export const lowRiseRoofCoefficients: LowRiseCoefficients = Object.freeze({
  byShelter: {
    exposed: [-0.4, -0.5, -0.6, -0.5, -0.4],
    'half height': [-0.35, -0.45, -0.55, -0.45, -0.35],
    'equal height': [-0.3, -0.4, -0.5, -0.4, -0.3],
  },
  source,
  status: 'memory',
} as const);

/** Cap of a flue or roof outlet that stands clear of the roof, in wind of any direction [-]. */
export const exposedCapCoefficient: Provenance & { readonly coefficient: number } = Object.freeze({
  coefficient: -0.5,
  source:
    'Walker and Wilson, wind coefficient of a flue cap above the roof; ASHRAE Handbook Fundamentals',
  status: 'memory',
} as const);
