import { requireFinite } from '../internal/require.js';
import type { AirState } from '../laws/inlet-air.js';
import { flueCooling, type CooledGas } from './flue-cooling.js';
import { airAsFlueGas, type FlueGas } from './flue-gas.js';
import { flueHeatTransfer } from './flue-heat-transfer.js';
import { flueSurface, type FluePiece } from './flue-piece.js';
import { stateOfColumn } from './internal/state-of-column.js';

/** A flue, what flows in it and the air outdoors. */
export interface FlueFlow {
  /** From the appliance to the top. */
  readonly pieces: readonly FluePiece[];
  /** Upwards positive; negative is outdoor air that comes down [kg/s]. */
  readonly massFlowKgPerS: number;
  /** Gas that enters at the appliance's end. */
  readonly gas: FlueGas;
  /** Its temperature; without meaning when air comes down [°C]. */
  readonly inletTemperatureC: number;
  readonly outdoorTemperatureC: number;
  /** Absolute pressure [Pa]. */
  readonly pressurePa: number;
}

/** Gas in one piece of a flue. */
export interface FluePieceState extends CooledGas {
  /** Density at the mean temperature [kg/m3]. */
  readonly densityKgPerM3: number;
  /** Theoretical draft of the piece's rise [Pa]. */
  readonly draftPa: number;
}

/** Gas in a whole flue. */
export interface FlueState {
  /** In the order of the flue's pieces. */
  readonly pieces: readonly FluePieceState[];
  /** Theoretical draft, the sum over the pieces, positive upwards [Pa]. */
  readonly draftPa: number;
  /** Density that gives the same draft over the whole rise: that of the link's column [kg/m3]. */
  readonly columnDensityKgPerM3: number;
  /** Temperature at the end where the gas leaves [°C]. */
  readonly outletTemperatureC: number;
  /** Gas on the mean of the flue: the air of the node before the flue, so that its law has the right density. */
  readonly meanGas: AirState;
}

/**
 * Temperatures, densities and draft of a flue whose wall has come to rest.
 *
 * Piece after piece the gas cools by `flueCooling`. Where the flow is downward, outdoor air enters at the top and takes
 * the pieces in reverse; where there is none, every piece has the temperature around it.
 *
 * @param flow - pieces, flow, gas and outdoors
 * @returns state of every piece and of the whole
 *
 * Source: EN 13384-1, sections 8 and 9 (from memory).
 */
export function flueInSteadyState(flow: FlueFlow): FlueState {
  const { pieces, massFlowKgPerS, inletTemperatureC, outdoorTemperatureC } = flow;
  requireFinite('massFlowKgPerS', massFlowKgPerS);
  const down = massFlowKgPerS < 0;
  const gas = massFlowKgPerS > 0 ? flow.gas : airAsFlueGas;
  const heatCapacityFlowWPerK = Math.abs(massFlowKgPerS) * gas.specificHeatJPerKgK;
  let temperatureC = down ? outdoorTemperatureC : inletTemperatureC;
  const cooled = (down ? [...pieces].reverse() : pieces).map((piece) => {
    const coefficient = flueHeatTransfer(piece.construction, piece.surroundings);
    const state = flueCooling({
      inletTemperatureC: temperatureC,
      ambientTemperatureC: piece.ambientTemperatureC,
      conductanceWPerK: coefficient * flueSurface(piece),
      heatCapacityFlowWPerK,
    });
    temperatureC = state.outletTemperatureC;
    return state;
  });
  if (down) cooled.reverse();
  return stateOfColumn(flow, gas, cooled);
}
