import { requireFinite, requireNotNegative } from '../internal/require.js';

/** Gas that flows through a stretch of flue. */
export interface CoolingGas {
  /** Temperature where it enters [°C]. */
  readonly inletTemperatureC: number;
  /** Temperature of the air around the flue [°C]. */
  readonly ambientTemperatureC: number;
  /** Heat transfer coefficient times inner surface [W/K]. */
  readonly conductanceWPerK: number;
  /** Mass flow times specific heat; 0 for gas that stands [W/K]. */
  readonly heatCapacityFlowWPerK: number;
}

/** Gas at the end and on the mean of a stretch of flue. */
export interface CooledGas {
  /** Heat transfer by heat capacity flow, K = U k L/(m c_p); infinite for gas that stands [-]. */
  readonly coolingNumber: number;
  /** Temperature where it leaves [°C]. */
  readonly outletTemperatureC: number;
  /** Mean along the stretch [°C]. */
  readonly meanTemperatureC: number;
  /** Heat given to the surroundings, negative where the gas is warmed [W]. */
  readonly heatLossW: number;
}

/**
 * How gas cools along a flue in steady state [°C].
 *
 * T(x) = Ta + (Te − Ta) exp(−K x/L); outlet Ta + (Te − Ta) e^−K, mean Ta + (Te − Ta)(1 − e^−K)/K. Gas that stands has
 * the temperature around it.
 *
 * @param gas - inlet, surroundings, conductance and flow
 * @returns outlet and mean temperature and heat loss
 *
 * Source: EN 13384-1, section 9 (from memory); derived, an exponential.
 *
 * @example
 * flueCooling({
 *   inletTemperatureC: 160,
 *   ambientTemperatureC: -5,
 *   conductanceWPerK: 7.5398,
 *   heatCapacityFlowWPerK: 6.3,
 * }).outletTemperatureC; // => 44.86
 */
export function flueCooling(gas: CoolingGas): CooledGas {
  const { inletTemperatureC, ambientTemperatureC, conductanceWPerK, heatCapacityFlowWPerK } = gas;
  requireFinite('inletTemperatureC', inletTemperatureC);
  requireFinite('ambientTemperatureC', ambientTemperatureC);
  requireNotNegative('conductanceWPerK', conductanceWPerK);
  requireNotNegative('heatCapacityFlowWPerK', heatCapacityFlowWPerK);
  if (heatCapacityFlowWPerK === 0) {
    return {
      coolingNumber: Infinity,
      outletTemperatureC: ambientTemperatureC,
      meanTemperatureC: ambientTemperatureC,
      heatLossW: 0,
    };
  }
  const coolingNumber = conductanceWPerK / heatCapacityFlowWPerK;
  const excess = inletTemperatureC - ambientTemperatureC;
  // 1 − e^−K without cancellation for a short flue.
  const lost = -Math.expm1(-coolingNumber);
  return {
    coolingNumber,
    outletTemperatureC: ambientTemperatureC + excess * Math.exp(-coolingNumber),
    meanTemperatureC: ambientTemperatureC + excess * (coolingNumber > 0 ? lost / coolingNumber : 1),
    heatLossW: heatCapacityFlowWPerK * excess * lost,
  };
}
