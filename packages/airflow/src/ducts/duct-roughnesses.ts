import type { Provenance } from '../provenance.js';

/** Materials and makes of duct for which a roughness is stated. */
export type DuctMaterial =
  | 'drawn tubing'
  | 'plastic'
  | 'steel'
  | 'aluminium, crimped round'
  | 'galvanised, round, long seam'
  | 'galvanised, round, spiral seam'
  | 'galvanised, round, short lengths'
  | 'galvanised, rectangular'
  | 'flexible, fully extended'
  | 'flexible, corrugated spiral'
  | 'flexible, fabric and wire';

/** Roughness of a wall: what is taken, and the range of the source. */
export interface DuctRoughness extends Provenance {
  /** Roughness that is taken where no other is known [m]. */
  readonly roughnessM: number;
  /** Least roughness of the source [m]. */
  readonly leastM: number;
  /** Greatest roughness of the source [m]. */
  readonly mostM: number;
}

const table =
  'table of duct roughness factors in feet (engineersedge.com, fluid flow), 1 ft = 0.3048 m';
const metresPerFoot = 0.3048;

/**
 * Roughness of ducts by material [m].
 *
 * Where the source states a range and no typical value, its upper end is taken: the duct then carries
 * less, and a make-up duct is not made better than it may be.
 */
export const ductRoughnesses: Readonly<Record<DuctMaterial, DuctRoughness>> = Object.freeze({
  'drawn tubing': fromFeet(0.0000015, 0.0000015, 0.0000015),
  plastic: fromFeet(0.00003, 0.00015, 0.00015),
  steel: fromFeet(0.00015, 0.00015, 0.00015),
  'aluminium, crimped round': fromFeet(0.00012, 0.0002, 0.0002),
  'galvanised, round, long seam': fromFeet(0.00016, 0.00032, 0.00032),
  'galvanised, round, spiral seam': fromFeet(0.0002, 0.0004, 0.0003),
  'galvanised, round, short lengths': fromFeet(0.0005, 0.0005, 0.0005),
  'galvanised, rectangular': fromFeet(0.00027, 0.0005, 0.0005),
  'flexible, fully extended': fromFeet(0.0003, 0.003, 0.003),
  'flexible, corrugated spiral': fromFeet(0.0018, 0.003, 0.003),
  'flexible, fabric and wire': {
    ...fromFeet(0.0035, 0.015, 0.01),
    source:
      'ASHRAE Handbook Fundamentals, 1993 to 2009, duct design, category rough, fully extended',
    status: 'memory',
  },
});

function fromFeet(leastFt: number, mostFt: number, takenFt: number): DuctRoughness {
  return Object.freeze({
    roughnessM: takenFt * metresPerFoot,
    leastM: leastFt * metresPerFoot,
    mostM: mostFt * metresPerFoot,
    source: table,
    status: 'found',
  } as const);
}
