import type { Provenance } from '../provenance.js';

/** How much buildings around a house keep the wind off it. */
export type Shelter = 'exposed' | 'half height' | 'equal height';

/** Walls and roofs of low buildings for which coefficients are tabulated. */
export type LowRiseSurface =
  | 'square-plan wall'
  | 'long wall'
  | 'short wall'
  | 'square-plan flat roof'
  | 'square-plan roof'
  | 'square-plan steep roof'
  | 'long-plan flat roof';

/** Coefficients at 0, 45, 90, 135 and 180° from the surface's own direction [-]. */
export type FiveDirections = readonly [number, number, number, number, number];

/** Wind pressure coefficients of one surface of a low building. */
export interface LowRiseCoefficients extends Provenance {
  /** What the surface is, and from where its incidence counts. */
  readonly description: string;
  readonly byShelter: Readonly<Record<Shelter, FiveDirections>>;
}

const document =
  'AIVC Technical Note 44 (Orme, Liddament and Wilson, 1994) and Liddament, A Guide to Energy Efficient Ventilation (1996), appendix 2, low-rise buildings of up to three storeys';
const square = { source: `${document}, plan 1:1`, status: 'memory' } as const;
const long = { source: `${document}, plan 2:1`, status: 'memory' } as const;

/**
 * Mean wind pressure coefficients of low buildings of up to three storeys, by surface and shelter, every 45°.
 *
 * Shelter is the height of the buildings around: none, half its height, its own height. Coefficients refer to the
 * speed at eaves height over the open terrain, shelter included. Left and right of the normal are alike. The stated
 * accuracy of such tables is poor: use them to see how much wind matters.
 */
export const lowRiseSurfaces: Readonly<Record<LowRiseSurface, LowRiseCoefficients>> = Object.freeze(
  {
    'square-plan wall': {
      description: 'wall of a square plan, from its outward normal',
      byShelter: {
        exposed: [0.7, 0.35, -0.5, -0.4, -0.2],
        'half height': [0.4, 0.1, -0.3, -0.35, -0.2],
        'equal height': [0.2, 0.05, -0.25, -0.3, -0.25],
      },
      ...square,
    },
    'long wall': {
      description: 'long wall of a plan twice as long as wide, from its outward normal',
      byShelter: {
        exposed: [0.5, 0.25, -0.5, -0.8, -0.7],
        'half height': [0.25, 0.06, -0.35, -0.6, -0.5],
        'equal height': [0.06, -0.12, -0.2, -0.38, -0.3],
      },
      source: `${document}, plan 2:1; the sign of the sheltered entries at 45° is uncertain`,
      status: 'memory',
    },
    'short wall': {
      description: 'short wall of a plan twice as long as wide, from its outward normal',
      byShelter: {
        exposed: [0.6, 0.2, -0.9, -0.6, -0.35],
        'half height': [0.4, 0.2, -0.6, -0.5, -0.3],
        'equal height': [0.18, 0.15, -0.3, -0.32, -0.2],
      },
      ...long,
    },
    'square-plan flat roof': {
      description:
        'half of a roof of less than 10° pitch over a square plan, from the normal of its eaves',
      byShelter: {
        exposed: [-0.8, -0.7, -0.6, -0.5, -0.4],
        'half height': [-0.6, -0.5, -0.4, -0.5, -0.6],
        'equal height': [-0.5, -0.5, -0.4, -0.5, -0.5],
      },
      ...square,
    },
    'square-plan roof': {
      description: 'slope of 11 to 30° over a square plan, from the normal of its eaves',
      byShelter: {
        exposed: [-0.4, -0.5, -0.6, -0.5, -0.4],
        'half height': [-0.35, -0.45, -0.55, -0.45, -0.35],
        'equal height': [-0.3, -0.4, -0.5, -0.4, -0.3],
      },
      ...square,
    },
    'square-plan steep roof': {
      description: 'slope of more than 30° over a square plan, from the normal of its eaves',
      byShelter: {
        exposed: [0.3, -0.4, -0.6, -0.4, -0.5],
        'half height': [0.3, -0.5, -0.6, -0.5, -0.5],
        'equal height': [0.25, -0.3, -0.5, -0.3, -0.4],
      },
      ...square,
    },
    'long-plan flat roof': {
      description:
        'roof of less than 10° pitch over a plan twice as long as wide, from a long wall',
      byShelter: {
        exposed: [-0.7, -0.7, -0.8, -0.7, -0.7],
        'half height': [-0.6, -0.6, -0.6, -0.6, -0.6],
        'equal height': [-0.49, -0.46, -0.41, -0.46, -0.49],
      },
      source: `${document}, plan 2:1; the entries among buildings of half height are approximate`,
      status: 'memory',
    },
  },
);
