import { requireBetween, requireNotNegative, requirePositive } from '../internal/require.js';
import type { FlueConstruction } from './flue-constructions.js';
import type { FlueSurroundings } from './flue-heat-transfer.js';

/** A stretch of flue of one size, one wall and one place: the connector, the chimney, its part above the roof. */
export interface FluePiece {
  /** Length along the gas [m]. */
  readonly lengthM: number;
  /** Height gained along it: 0 for a level connector, the length for a chimney [m]. */
  readonly riseM: number;
  /** Four times the area by the perimeter; the diameter of a round flue [m]. */
  readonly hydraulicDiameterM: number;
  readonly areaM2: number;
  readonly construction: FlueConstruction;
  readonly surroundings: FlueSurroundings;
  /** Temperature of the air around it [°C]. */
  readonly ambientTemperatureC: number;
  /** Losses beside friction, in velocity pressures of its area; see `flueLossCoefficient` [-]. */
  readonly lossCoefficient: number;
}

/**
 * Inner surface of a piece of flue [m2].
 *
 * @param piece - a piece of flue
 * @returns perimeter times length, the perimeter four times the area by the hydraulic diameter [m2]
 */
export function flueSurface(piece: FluePiece): number {
  requirePositive('hydraulicDiameterM', piece.hydraulicDiameterM);
  requirePositive('areaM2', piece.areaM2);
  requireNotNegative('lengthM', piece.lengthM);
  requireBetween('riseM', piece.riseM, [-piece.lengthM, piece.lengthM]);
  return (4 * piece.areaM2 * piece.lengthM) / piece.hydraulicDiameterM;
}
