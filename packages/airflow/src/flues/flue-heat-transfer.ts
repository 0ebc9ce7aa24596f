import type { FlueConstruction } from './flue-constructions.js';
import type { Provenance } from '../provenance.js';

/** Where a piece of flue stands. */
export type FlueSurroundings = 'indoors' | 'outdoors';

/** Heat transfer between a flue's outer surface and the air around it [W/(m2 K)]. */
export interface OuterFilm extends Provenance {
  readonly heatTransferWPerM2K: number;
}

const source = 'EN 13384-1, external coefficients of heat transfer';

/** Films of air outside a flue: still air indoors, wind outdoors. */
export const outerFilms: Readonly<Record<FlueSurroundings, OuterFilm>> = Object.freeze({
  indoors: { heatTransferWPerM2K: 8, source, status: 'memory' },
  outdoors: { heatTransferWPerM2K: 23, source, status: 'memory' },
});

/**
 * Heat transfer from the gas in a flue to the air around it, by inner surface [W/(m2 K)].
 *
 * Constructions are known in still air. Outdoors the film of still air is replaced by that of wind: 1/k = 1/k_in −
 * (1/8 − 1/23)/(outer by inner perimeter).
 *
 * @param construction - the wall
 * @param surroundings - where it stands
 * @returns overall coefficient by inner surface [W/(m2 K)]
 *
 * Source: series of resistances; films of EN 13384-1 (from memory).
 *
 * @example
 * flueHeatTransfer(flueConstructions['masonry, tile-lined'], 'outdoors'); // => 7.5
 */
export function flueHeatTransfer(
  construction: FlueConstruction,
  surroundings: FlueSurroundings,
): number {
  const { heatTransferWPerM2K, outerToInner } = construction;
  const film = 1 / outerFilms[surroundings].heatTransferWPerM2K;
  const change = (film - 1 / outerFilms.indoors.heatTransferWPerM2K) / outerToInner;
  return 1 / (1 / heatTransferWPerM2K + change);
}
