import { airAt } from '../../air/air-at.js';
import { gravity } from '../../air/gravity.js';
import { requireKelvin } from '../../internal/require.js';
import type { CooledGas } from '../flue-cooling.js';
import type { FlueGas } from '../flue-gas.js';
import type { FlueFlow, FluePieceState, FlueState } from '../flue-state.js';

/**
 * Draft and densities of a flue from the mean temperatures of its pieces.
 *
 * @param flow - pieces, outdoors and pressure
 * @param gas - gas in the flue
 * @param cooled - temperatures of every piece, in the order of the pieces
 * @returns state of every piece and of the whole
 */
export function stateOfColumn(
  flow: Pick<FlueFlow, 'pieces' | 'massFlowKgPerS' | 'outdoorTemperatureC' | 'pressurePa'>,
  gas: FlueGas,
  cooled: readonly CooledGas[],
): FlueState {
  const { pieces, outdoorTemperatureC, pressurePa, massFlowKgPerS } = flow;
  const outdoors = airAt({ temperatureC: outdoorTemperatureC, pressurePa }).densityKgPerM3;
  const states = cooled.map((state, index): FluePieceState => {
    const kelvin = requireKelvin(state.meanTemperatureC);
    const densityKgPerM3 = pressurePa / (gas.gasConstantJPerKgK * kelvin);
    const draftPa = (outdoors - densityKgPerM3) * gravity * pieces[index]!.riseM;
    // Written out: a spread here takes half the time of a whole flue's evaluation.
    return {
      coolingNumber: state.coolingNumber,
      outletTemperatureC: state.outletTemperatureC,
      meanTemperatureC: state.meanTemperatureC,
      heatLossW: state.heatLossW,
      densityKgPerM3,
      draftPa,
    };
  });
  const lengthM = sum(pieces, (piece) => piece.lengthM);
  const riseM = sum(pieces, (piece) => piece.riseM);
  // A flue without length or rise has the mean of nothing: its first piece, or outdoor air, stands for it.
  const meanTemperatureC =
    lengthM > 0
      ? sum(states, (state, index) => state.meanTemperatureC * pieces[index]!.lengthM) / lengthM
      : (states[0]?.meanTemperatureC ?? outdoorTemperatureC);
  const meanDensity = pressurePa / (gas.gasConstantJPerKgK * requireKelvin(meanTemperatureC));
  const end = massFlowKgPerS < 0 ? states[0] : states.at(-1);
  return {
    pieces: states,
    draftPa: sum(states, (state) => state.draftPa),
    columnDensityKgPerM3:
      riseM === 0
        ? meanDensity
        : sum(states, (state, index) => state.densityKgPerM3 * pieces[index]!.riseM) / riseM,
    outletTemperatureC: end?.outletTemperatureC ?? outdoorTemperatureC,
    meanGas: { temperatureC: meanTemperatureC, densityKgPerM3: meanDensity },
  };
}

function sum<Item>(items: readonly Item[], read: (item: Item, index: number) => number): number {
  return items.reduce((total, item, index) => total + read(item, index), 0);
}
