import { requireBetween, requireFinite } from '../internal/require.js';
import type { FluePiece } from './flue-piece.js';

/** Temperatures of a flue's wall, cell by cell along every piece. */
export interface FlueWall {
  /** Cells of each piece, from the appliance to the top [°C]. */
  readonly temperaturesC: readonly Float64Array[];
}

/**
 * A flue's wall at rest: every cell of every piece at one temperature [°C].
 *
 * @param pieces - from the appliance to the top
 * @param cells - cells a piece, 1 to 1000; 20 follow the gas within some percent
 * @param temperatureC - temperature of all cells; that around each piece when absent [°C]
 * @returns the wall, to be given to `warmFlue`
 */
export function flueWallAtRest(
  pieces: readonly FluePiece[],
  cells = 20,
  temperatureC?: number,
): FlueWall {
  requireBetween('cells', cells, [1, 1000]);
  if (temperatureC !== undefined) requireFinite('temperatureC', temperatureC);
  return {
    temperaturesC: pieces.map((piece) =>
      new Float64Array(Math.round(cells)).fill(temperatureC ?? piece.ambientTemperatureC),
    ),
  };
}
