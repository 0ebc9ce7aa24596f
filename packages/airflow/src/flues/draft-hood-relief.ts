import { requirePositive } from '../internal/require.js';
import type { OrificeDescription } from '../laws/flow-law-description.js';
import type { Provenance } from '../provenance.js';

/** Free area of a draft hood's relief opening by the area of its outlet, where it was not measured. */
export const typicalReliefArea: Provenance & { readonly byOutletArea: number } = Object.freeze({
  byOutletArea: 1.5,
  source: 'no source; relief openings are seen somewhat larger than the outlet',
  status: 'assumed',
} as const);

/**
 * The law of a draft hood's relief opening: a link between its junction and the room, open both ways.
 *
 * @param areaM2 - free area of the opening; by `typicalReliefArea` where it is not known [m2]
 * @returns description of the link's law: a sharp-edged opening
 *
 * Source: the orifice law, discharge coefficient 0.6 (from memory).
 */
export function draftHoodRelief(areaM2: number): OrificeDescription {
  requirePositive('areaM2', areaM2);
  return { kind: 'orifice', areaM2, dischargeCoefficient: 0.6 };
}
