import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireFinite, requirePositive } from '../internal/require.js';
import type { CooledGas } from './flue-cooling.js';
import { airAsFlueGas } from './flue-gas.js';
import { flueHeatTransfer } from './flue-heat-transfer.js';
import type { FlueFlow, FlueState } from './flue-state.js';
import { flueSurface, type FluePiece } from './flue-piece.js';
import type { FlueWall } from './flue-wall.js';
import { stateOfColumn } from './internal/state-of-column.js';

/** A step of a flue that warms or cools: what flows, from which wall, for how long. */
export interface FlueStep extends FlueFlow {
  readonly wall: FlueWall;
  /** Length of the step [s]. */
  readonly durationS: number;
}

/** A flue at the end of a step. */
export interface WarmedFlue {
  readonly wall: FlueWall;
  /** Gas as it flows beside the wall at the end of the step. */
  readonly state: FlueState;
  readonly heat: FlueHeat;
}

/** Where the heat of a step went; what the gas gives is what is stored and what is lost, to rounding. */
export interface FlueHeat {
  /** Given by the gas to the wall [J]. */
  readonly fromGasJ: number;
  /** Stored in the wall [J]. */
  readonly storedJ: number;
  /** Lost to the surroundings [J]. */
  readonly lostJ: number;
}

/**
 * Heat transfer between gas and inner surface [W/(m2 K)]; our choice, in the range of 8 to 25 that the formulas for
 * forced and mixed convection in flues give (from memory).
 */
const gasSideWPerM2K = 20;

/**
 * One step of the warming of a flue by its gas, stable for steps of any length [°C].
 *
 * The gas passes cell after cell and has no heat capacity of its own; each cell of the wall has one temperature T:
 * C dT/dt = m c_p (1 − e^−N)(T_gas − T) − U (T − Ta), N = h A/(m c_p), taken at the end of the step. So no temperature
 * ever leaves the range of gas, wall and surroundings. Only what enters the flue heats it: give the vent's inlet
 * temperature of `draftHoodMixing`. Where the flow is downward, outdoor air enters at the top, cools the wall from
 * there, and comes to stay at outdoor temperature where the flue stands outdoors. Where nothing flows, the gas has the
 * wall's temperature.
 *
 * @param step - flue, wall, flow and duration
 * @returns wall, gas and heat at the end of the step
 *
 * Source: energy balance of a lumped wall with an implicit Euler step (derived).
 */
export function warmFlue(step: FlueStep): WarmedFlue {
  const { pieces, wall, massFlowKgPerS, durationS, inletTemperatureC } = step;
  requirePositive('durationS', durationS);
  requireFinite('massFlowKgPerS', massFlowKgPerS);
  requireFinite('inletTemperatureC', inletTemperatureC);
  requireFinite('outdoorTemperatureC', step.outdoorTemperatureC);
  if (wall.temperaturesC.length !== pieces.length) {
    throw new AirflowArgumentError('wall', wall.temperaturesC.length, `${pieces.length} pieces`);
  }
  const down = massFlowKgPerS < 0;
  const gas = massFlowKgPerS > 0 ? step.gas : airAsFlueGas;
  const heatCapacityFlow = Math.abs(massFlowKgPerS) * gas.specificHeatJPerKgK;
  const heat = { fromGasJ: 0, storedJ: 0, lostJ: 0 };
  const cooled: CooledGas[] = [];
  const temperaturesC: Float64Array[] = [];
  let gasC = down ? step.outdoorTemperatureC : inletTemperatureC;
  for (let k = 0; k < pieces.length; k++) {
    const index = down ? pieces.length - 1 - k : k;
    const passed = passPiece(pieces[index]!, wall.temperaturesC[index]!, {
      gasC,
      heatCapacityFlow,
      durationS,
      down,
    });
    gasC = passed.gas.outletTemperatureC;
    cooled[index] = passed.gas;
    temperaturesC[index] = passed.temperaturesC;
    heat.fromGasJ += passed.heat.fromGasJ;
    heat.storedJ += passed.heat.storedJ;
    heat.lostJ += passed.heat.lostJ;
  }
  return { wall: { temperaturesC }, state: stateOfColumn(step, gas, cooled), heat };
}

function passPiece(
  piece: FluePiece,
  before: Float64Array,
  flow: {
    readonly gasC: number;
    readonly heatCapacityFlow: number;
    readonly durationS: number;
    readonly down: boolean;
  },
): { gas: CooledGas; temperaturesC: Float64Array; heat: FlueHeat } {
  const { heatCapacityFlow, durationS, down } = flow;
  const cells = before.length;
  const surface = flueSurface(piece) / cells;
  const overall = flueHeatTransfer(piece.construction, piece.surroundings);
  // A wall that hardly resists has a film inside that leaves it some resistance.
  const film = Math.max(gasSideWPerM2K, 1.25 * overall);
  const outer = surface / (1 / overall - 1 / film);
  const stored = (surface * piece.construction.heatCapacityJPerM2K) / durationS;
  const transfers = heatCapacityFlow > 0 ? (surface * film) / heatCapacityFlow : 0;
  const given = -Math.expm1(-transfers);
  const inner = heatCapacityFlow * given;
  const meanShare = transfers > 0 ? given / transfers : 1;

  const temperaturesC = new Float64Array(cells);
  let gasC = flow.gasC;
  let gasMean = 0;
  let fromGas = 0;
  let intoWall = 0;
  let lost = 0;
  for (let k = 0; k < cells; k++) {
    const cell = down ? cells - 1 - k : k;
    const old = before[cell]!;
    const capacity = stored + inner + outer;
    const wallC =
      capacity > 0
        ? (stored * old + inner * gasC + outer * piece.ambientTemperatureC) / capacity
        : old;
    temperaturesC[cell] = wallC;
    const enteringC = heatCapacityFlow > 0 ? gasC : wallC;
    const leavingC = enteringC - (enteringC - wallC) * given;
    gasMean += (wallC + (enteringC - wallC) * meanShare) / cells;
    fromGas += heatCapacityFlow * (enteringC - leavingC) * durationS;
    intoWall += stored * (wallC - old) * durationS;
    lost += outer * (wallC - piece.ambientTemperatureC) * durationS;
    gasC = leavingC;
  }
  return {
    gas: {
      coolingNumber: heatCapacityFlow > 0 ? transfers * cells : Infinity,
      outletTemperatureC: gasC,
      meanTemperatureC: gasMean,
      heatLossW: lost / durationS,
    },
    temperaturesC,
    heat: { fromGasJ: fromGas, storedJ: intoWall, lostJ: lost },
  };
}
