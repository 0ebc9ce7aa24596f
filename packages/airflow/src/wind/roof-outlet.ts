import type { Provenance } from '../provenance.js';

/** Wind pressure coefficient of an outlet above a roof. */
export interface RoofOutlet extends Provenance {
  /** Coefficient for wind of any direction, referred to the speed at the outlet [-]. */
  readonly coefficient: number;
}

/** Cap of a flue or roof outlet that stands clear of the roof, in wind of any direction [-]. */
export const exposedCapCoefficient: RoofOutlet = Object.freeze({
  coefficient: -0.5,
  source:
    'Walker and Wilson, wind coefficient of a flue cap above the roof; ASHRAE Handbook Fundamentals',
  status: 'memory',
} as const);

/**
 * Outlet without a cap, or one that stays below its ridge or beside a wall, where wind may press down it [-].
 *
 * Nothing general is known of such outlets: gusts reach them from above and the roof may hold them in pressure. Zero
 * grants the wind no help to the draft.
 */
export const lowOutletCoefficient: RoofOutlet = Object.freeze({
  coefficient: 0,
  source:
    'no source; the wind is granted no help to the draft of an outlet that is not clear of the roof',
  status: 'assumed',
} as const);
