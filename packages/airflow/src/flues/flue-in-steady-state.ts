import { requireFinite } from '../internal/require.js';
import { flueCooling } from './flue-cooling.js';
import { airAsFlueGas } from './flue-gas.js';
import { flueHeatTransfer } from './flue-heat-transfer.js';
import { flueSurface } from './flue-piece.js';
import type { FlueFlow, FlueState } from './flue-state.js';
import { stateOfColumn } from './internal/state-of-column.js';

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
