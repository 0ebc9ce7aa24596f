import type { AirState } from '../laws/inlet-air.js';
import type { CooledGas } from './flue-cooling.js';
import type { FlueGas } from './flue-gas.js';
import type { FluePiece } from './flue-piece.js';

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
