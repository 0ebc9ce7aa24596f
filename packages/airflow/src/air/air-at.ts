import type { Air } from './air.js';
import { airViscosity } from './air-viscosity.js';
import { moistAirDensity } from './moist-air-density.js';
import { standardPressure } from './standard-pressure.js';

/** A place's temperature, its pressure or its altitude, and its humidity if that matters. */
export type AirPlace = {
  /** Temperature [°C]. */
  readonly temperatureC: number;
  /** Relative humidity, 0 to 1; dry when absent [-]. */
  readonly relativeHumidity?: number;
} & (
  | {
      /** Absolute pressure [Pa]. */
      readonly pressurePa: number;
    }
  | {
      /** Altitude above sea level, where the pressure is that of the standard atmosphere [m]. */
      readonly altitudeM: number;
    }
);

/**
 * The air at a place: its temperature, density and viscosity.
 *
 * Air is dry unless a humidity is given: at 20 °C and 50 % that makes it 0.4 % too dense.
 *
 * @param place - temperature, pressure or altitude, and humidity
 * @returns temperature [°C], density [kg/m3] and dynamic viscosity [Pa s]
 *
 * @example
 * airAt({ temperatureC: 0, altitudeM: 1500 }).densityKgPerM3; // => 1.0784
 */
export function airAt(place: AirPlace): Air {
  const { temperatureC, relativeHumidity = 0 } = place;
  const pressurePa = 'pressurePa' in place ? place.pressurePa : standardPressure(place.altitudeM);
  return {
    temperatureC,
    densityKgPerM3: moistAirDensity({ temperatureC, pressurePa, relativeHumidity }),
    viscosityPaS: airViscosity(temperatureC),
  };
}
