import { AirflowArgumentError } from '../airflow-argument-error.js';

/** Kelvin at 0 °C. */
const kelvinAtZeroCelsius = 273.15;

/**
 * Returns the absolute temperature, refusing what lies at or below absolute zero.
 *
 * @param temperatureC - temperature [°C]
 * @returns absolute temperature [K]
 */
export function requireKelvin(temperatureC: number): number {
  const kelvin = temperatureC + kelvinAtZeroCelsius;
  if (!(kelvin > 0 && kelvin < Infinity)) {
    throw new AirflowArgumentError('temperatureC', temperatureC, 'a finite number above -273.15');
  }
  return kelvin;
}

/** Refuses anything but a finite number. */
export function requireFinite(argument: string, value: number): void {
  if (!Number.isFinite(value)) throw new AirflowArgumentError(argument, value, 'a finite number');
}

/** Refuses anything but a finite number above zero. */
export function requirePositive(argument: string, value: number): void {
  if (!(value > 0 && value < Infinity)) {
    throw new AirflowArgumentError(argument, value, 'a finite number above 0');
  }
}

/** Refuses anything but a finite number that is zero or more. */
export function requireNotNegative(argument: string, value: number): void {
  if (!(value >= 0 && value < Infinity)) {
    throw new AirflowArgumentError(argument, value, 'a finite number, 0 or more');
  }
}

/** Refuses anything outside the closed range. */
export function requireBetween(
  argument: string,
  value: number,
  [low, high]: readonly [low: number, high: number],
): void {
  if (!(value >= low && value <= high)) {
    throw new AirflowArgumentError(argument, value, `${low} to ${high}`);
  }
}
