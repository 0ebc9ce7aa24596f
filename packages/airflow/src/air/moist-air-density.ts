import { requireBetween, requireKelvin, requirePositive } from '../internal/require.js';
import { AirflowArgumentError } from '../airflow-argument-error.js';
import { saturationPressure } from './saturation-pressure.js';

/** What the density of moist air depends on. */
export interface MoistAirState {
  /** Temperature [°C]. */
  readonly temperatureC: number;
  /** Absolute pressure [Pa]. */
  readonly pressurePa: number;
  /** Relative humidity, 0 (dry) to 1 (saturated) [-]. */
  readonly relativeHumidity: number;
}

/** Gas constant of dry air [J/(kg K)]. */
const dryAirGasConstant = 287.055;

/** One minus the ratio of the molar masses of water and dry air [-]. */
const vapourDeficit = 0.37802;

/**
 * Density of moist air [kg/m3].
 *
 * rho = (p − 0.37802 p_v) / (287.055 T), p_v = relative humidity × saturation pressure: a mixture of
 * ideal gases. It holds at every temperature and altitude of a building and differs from CIPM-2007,
 * which is exact but stated only for 600 to 1100 hPa and 15 to 27 °C, by less than 0.05 %.
 *
 * @param state - temperature, pressure and humidity
 * @returns density [kg/m3]
 *
 * Source: ISO 9972:2015, annex on air density (from memory); the saturation pressure names its own.
 *
 * @example
 * moistAirDensity({ temperatureC: 20, pressurePa: 101325, relativeHumidity: 0.5 }); // => 1.1988
 */
export function moistAirDensity(state: MoistAirState): number {
  const { temperatureC, pressurePa, relativeHumidity } = state;
  const kelvin = requireKelvin(temperatureC);
  requirePositive('pressurePa', pressurePa);
  requireBetween('relativeHumidity', relativeHumidity, [0, 1]);
  const vapourPa = relativeHumidity === 0 ? 0 : relativeHumidity * saturationPressure(temperatureC);
  if (vapourPa > pressurePa) {
    throw new AirflowArgumentError(
      'relativeHumidity',
      relativeHumidity,
      'a humidity whose vapour pressure does not exceed the pressure of the air',
    );
  }
  return (pressurePa - vapourDeficit * vapourPa) / (dryAirGasConstant * kelvin);
}
