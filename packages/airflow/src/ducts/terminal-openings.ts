import type { Provenance } from '../provenance.js';

/** Ends of a duct at a wall or roof. */
export type DuctTerminal =
  | 'plain hooded cap'
  | 'hooded cap with flap'
  | 'louvred cap'
  | 'roof jack'
  | 'screened intake hood';

/** An end of a duct as a sharp-edged opening. */
export interface TerminalOpening extends Provenance {
  /** Free area by the area of the duct's nominal size [-]. */
  readonly freeShare: number;
  /** Discharge coefficient of the free area [-]. */
  readonly dischargeCoefficient: number;
}

const source =
  'our choice; no trustworthy open table of small caps was found. A maker’s pressure drop or free area replaces it';

/**
 * Ends of ducts as openings by free area, to be given to `freeAreaLossCoefficient`.
 *
 * Every use of one is an assumption and is to be listed as such.
 */
export const terminalOpenings: Readonly<Record<DuctTerminal, TerminalOpening>> = Object.freeze({
  'plain hooded cap': opening(1),
  'hooded cap with flap': opening(0.8),
  'louvred cap': opening(0.7),
  'roof jack': opening(0.9),
  'screened intake hood': opening(0.75),
});

function opening(freeShare: number): TerminalOpening {
  return Object.freeze({
    freeShare,
    dischargeCoefficient: 0.6,
    source,
    status: 'assumed',
  } as const);
}
