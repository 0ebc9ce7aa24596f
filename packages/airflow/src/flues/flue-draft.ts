import { gravity } from '../air/gravity.js';
import { requireKelvin, requireNotNegative, requirePositive } from '../internal/require.js';
import { airAsFlueGas } from './flue-gas.js';

/** A column of flue gas beside outdoor air. */
export interface FlueColumn {
  /** Height of the column; a connector's rise and the chimney are two columns [m]. */
  readonly heightM: number;
  /** Mean temperature of the gas [°C]. */
  readonly gasTemperatureC: number;
  readonly outdoorTemperatureC: number;
  /** Absolute pressure of the air [Pa]. */
  readonly pressurePa: number;
  /** That of air when absent, which is usual [J/(kg K)]. */
  readonly gasConstantJPerKgK?: number;
}

/**
 * Theoretical draft of a column of flue gas: what it draws before any loss [Pa].
 *
 * D = g p H (1/(R_air T_out) − 1/(R_gas T_gas)). Negative where the gas is heavier than the air outdoors, as in a cold
 * chimney in summer. What is left of it at a test tap is less the losses before the tap; at the flow that balances,
 * losses take all of it.
 *
 * @param column - height, temperatures and pressure
 * @returns draft, positive upwards [Pa]
 *
 * Source: hydrostatics; ASHRAE Handbook HVAC Systems and Equipment, chapter 35, with the constant 0.03413 (from
 * memory; g/R is 0.034163).
 *
 * @example
 * flueDraft({ heightM: 6, gasTemperatureC: 91.21, outdoorTemperatureC: -5, pressurePa: 101325 }); // => 20.45
 */
export function flueDraft(column: FlueColumn): number {
  const { heightM, gasTemperatureC, outdoorTemperatureC, pressurePa } = column;
  const { gasConstantJPerKgK = airAsFlueGas.gasConstantJPerKgK } = column;
  requireNotNegative('heightM', heightM);
  requirePositive('pressurePa', pressurePa);
  requirePositive('gasConstantJPerKgK', gasConstantJPerKgK);
  const outdoors = airAsFlueGas.gasConstantJPerKgK * requireKelvin(outdoorTemperatureC);
  const gas = gasConstantJPerKgK * requireKelvin(gasTemperatureC);
  return gravity * pressurePa * heightM * (1 / outdoors - 1 / gas);
}
