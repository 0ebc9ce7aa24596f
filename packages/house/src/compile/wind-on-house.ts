import {
  exposedCapCoefficient,
  wallPressureCoefficient,
  windIncidence,
  windPressure,
} from '@evendraft/airflow';
import type { House, Weather } from '../house.js';
import { faces } from './house-nodes.js';

/**
 * Wind pressure on the boundaries that every house has, minus undisturbed outdoors [Pa]: calm air, faces, roof.
 *
 * Walls by the wall correlation of `@evendraft/airflow`; the roof by one coefficient for all directions.
 *
 * @param house - the house, for its azimuth and side ratio
 * @param weather - wind speed at eave height and direction
 * @param densityKgPerM3 - density of the outdoor air [kg/m3]
 * @returns pressures in the order calm air, front, right, back, left, roof [Pa]
 */
export function windOnHouse(
  house: House,
  weather: Weather,
  densityKgPerM3: number,
): readonly number[] {
  const speedMPerS = weather.windSpeedMPerS;
  const onWalls = faces.map((_, quarter) => {
    const incidenceDeg = windIncidence({
      windFromDeg: weather.windFromDeg,
      faceAzimuthDeg: house.frontFacesDeg + 90 * quarter,
    });
    const sideRatio = quarter % 2 === 0 ? house.sideRatio : 1 / house.sideRatio;
    const coefficient = wallPressureCoefficient({ incidenceDeg, sideRatio });
    return windPressure({ coefficient, speedMPerS, densityKgPerM3 });
  });
  const { coefficient } = exposedCapCoefficient;
  return [0, ...onWalls, windPressure({ coefficient, speedMPerS, densityKgPerM3 })];
}
