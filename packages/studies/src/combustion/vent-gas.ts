import {
  airAsFlueGas,
  ductLoss,
  flueInSteadyState,
  gravity,
  type AirState,
} from '@evendraft/airflow';
import type { Vent, VentSystem } from './vent-system.js';

/** Gas that flows through a vent whose wall has come to rest. */
export interface VentGas {
  /** Upwards positive [kg/s]. */
  readonly massFlowKgPerS: number;
  /** Where it enters, at the lower end upwards and at the upper end downwards [°C]. */
  readonly inletTemperatureC: number;
  /** Where it leaves [°C]. */
  readonly outletTemperatureC: number;
  /** Density of the column that draws as the gas does [kg/m3]. */
  readonly columnDensityKgPerM3: number;
  /** Air that the vent's law takes as entering. */
  readonly lawAir: AirState;
  /** Lighter than outdoors by so much over its rise [Pa]. */
  readonly draftPa: number;
  /** By friction and fittings, with the sign of the flow [Pa]. */
  readonly lossPa: number;
  /** Given to the surroundings [W]. */
  readonly heatLossW: number;
}

/**
 * Gas in a vent at a flow, its wall at rest.
 *
 * Upwards the law has the density of the gas on its mean, as the network gives it; downwards that of what enters at
 * the top.
 *
 * @param vent - the vent
 * @param flow - mass flow and what enters [kg/s, °C]
 * @param system - outdoors and pressure
 * @returns temperatures, density, draft and loss
 */
export function ventGas(
  vent: Vent,
  flow: { readonly massFlowKgPerS: number; readonly inletTemperatureC: number },
  system: Pick<VentSystem, 'outdoorAir' | 'pressurePa'>,
): VentGas {
  const { massFlowKgPerS, inletTemperatureC } = flow;
  const { outdoorAir, pressurePa } = system;
  const state = flueInSteadyState({
    pieces: vent.pieces,
    massFlowKgPerS,
    gas: airAsFlueGas,
    inletTemperatureC,
    // What enters at the top of a connector is the gas of its chimney; the draft is taken from the density below.
    outdoorTemperatureC: massFlowKgPerS < 0 ? inletTemperatureC : outdoorAir.temperatureC,
    pressurePa,
  });
  const lawAir =
    massFlowKgPerS < 0 ? airOfTemperature(inletTemperatureC, pressurePa) : state.meanGas;
  return {
    massFlowKgPerS,
    inletTemperatureC,
    outletTemperatureC: state.outletTemperatureC,
    columnDensityKgPerM3: state.columnDensityKgPerM3,
    lawAir,
    draftPa: (outdoorAir.densityKgPerM3 - state.columnDensityKgPerM3) * gravity * riseOf(vent),
    lossPa: lossOf(vent, massFlowKgPerS, lawAir),
    heatLossW: state.pieces.reduce((sum, piece) => sum + piece.heatLossW, 0),
  };
}

/**
 * Height that a vent gains [m].
 *
 * @param vent - the vent
 * @returns sum over its pieces [m]
 */
export function riseOf({ pieces }: Vent): number {
  return pieces.reduce((sum, { riseM }) => sum + riseM, 0);
}

/**
 * What a flow loses in a vent [Pa].
 *
 * @param vent - the vent
 * @param massFlowKgPerS - upwards positive [kg/s]
 * @param air - air that its law takes as entering
 * @returns loss, with the sign of the flow [Pa]
 */
export function lossOf(vent: Vent, massFlowKgPerS: number, air: AirState): number {
  const volumeFlowM3PerS = massFlowKgPerS / air.densityKgPerM3;
  return ductLoss(vent.duct, { volumeFlowM3PerS, air });
}

/**
 * Gas of a temperature, as heavy as air of it.
 *
 * @param temperatureC - its temperature [°C]
 * @param pressurePa - absolute pressure [Pa]
 * @returns temperature and density of an ideal gas
 */
export function airOfTemperature(temperatureC: number, pressurePa: number): AirState {
  const { gasConstantJPerKgK } = airAsFlueGas;
  return {
    temperatureC,
    densityKgPerM3: pressurePa / (gasConstantJPerKgK * (temperatureC + 273.15)),
  };
}
