import type { Provenance } from '../provenance.js';
import type { Shelter } from './low-rise-surfaces.js';

/** Class of the shelter around a house: 1 none to 5 neighbours close by. */
export type ShelterClass = 1 | 2 | 3 | 4 | 5;

/** What one class of shelter does to the wind on a house. */
export interface ShelterClassData extends Provenance {
  /** What lies around the house. */
  readonly description: string;
  /** Factor on the wind speed at eaves height, for its walls [-]. */
  readonly speedFactor: number;
  /** Factor on the wind speed for a house with a flue, by storeys 1, 2, 3 [-]. */
  readonly speedFactorWithFlue: readonly [number, number, number];
  /** Shielding coefficient C' of the basic superposition model [-]. */
  readonly shieldingCoefficient: number;
  /** The column of the low-rise table that comes closest; our choice. */
  readonly tableShelter: Shelter;
}

const source =
  'ASHRAE Handbook Fundamentals, chapter 16, local shelter classes; speed factors of Walker and Wilson, HVAC&R Research 4(2), 1998; shielding coefficients of Sherman and Grimsrud, ASHRAE Transactions 86(2), 1980; which column of the low-rise table belongs to a class is our choice';

/**
 * The five classes of local shelter.
 *
 * A class either slows the wind on the unsheltered coefficients of `wallPressureCoefficient` (speed factor), or picks
 * a column of `lowRiseSurfaces`: never both, which would count the shelter twice.
 */
export const shelterClasses: Readonly<Record<ShelterClass, ShelterClassData>> = Object.freeze({
  1: {
    description: 'no obstructions or local shielding',
    speedFactor: 1,
    speedFactorWithFlue: [1.1, 1.07, 1.06],
    shieldingCoefficient: 0.324,
    tableShelter: 'exposed',
    source,
    status: 'memory',
  },
  2: {
    description: 'an isolated rural house',
    speedFactor: 0.9,
    speedFactorWithFlue: [1.02, 0.98, 0.97],
    shieldingCoefficient: 0.285,
    tableShelter: 'exposed',
    source,
    status: 'memory',
  },
  3: {
    description: 'buildings across the street',
    speedFactor: 0.7,
    speedFactorWithFlue: [0.86, 0.81, 0.79],
    shieldingCoefficient: 0.24,
    tableShelter: 'half height',
    source,
    status: 'memory',
  },
  4: {
    description: 'urban buildings on larger lots, obstructions more than one building height away',
    speedFactor: 0.5,
    speedFactorWithFlue: [0.7, 0.64, 0.61],
    shieldingCoefficient: 0.185,
    tableShelter: 'half height',
    source,
    status: 'memory',
  },
  5: {
    description: 'buildings or other structures immediately adjacent, closer than one house height',
    speedFactor: 0.3,
    speedFactorWithFlue: [0.54, 0.47, 0.43],
    shieldingCoefficient: 0.102,
    tableShelter: 'equal height',
    source,
    status: 'memory',
  },
});
