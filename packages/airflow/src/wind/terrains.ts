import type { Provenance } from '../provenance.js';

/** What lies upwind of a place, for some hundreds of metres. */
export type Terrain = 'city centre' | 'suburban' | 'open' | 'flat';

/** Shape of the wind's speed with height over one kind of terrain. */
export interface TerrainProfile extends Provenance {
  /** What the terrain looks like. */
  readonly description: string;
  /** Exponent of the profile [-]. */
  readonly exponent: number;
  /** Height at which the ground no longer slows the wind [m]. */
  readonly boundaryLayerM: number;
}

const source =
  'terrain parameters of ASHRAE Handbook Fundamentals, chapter 24, as restated in Indoor Air 2023, article 5433093, table 2';

/** The four terrains of the wind profile. */
export const terrains: Readonly<Record<Terrain, TerrainProfile>> = Object.freeze({
  'city centre': {
    description: 'centre of a large city',
    exponent: 0.33,
    boundaryLayerM: 460,
    source,
    status: 'found',
  },
  suburban: {
    description: 'urban, suburban or wooded, obstructions the size of houses close by',
    exponent: 0.22,
    boundaryLayerM: 370,
    source,
    status: 'found',
  },
  open: {
    description: 'open, scattered obstructions lower than 9 m; most weather stations',
    exponent: 0.14,
    boundaryLayerM: 270,
    source,
    status: 'found',
  },
  flat: {
    description: 'flat and unobstructed, or wind over open water',
    exponent: 0.1,
    boundaryLayerM: 210,
    source,
    status: 'found',
  },
});
