import {
  exposedCapCoefficient,
  lowOutletCoefficient,
  lowRiseCoefficient,
  shelterClasses,
  wallPressureCoefficient,
  windIncidence,
  windPressure,
  type LowRiseSurface,
} from '@evendraft/airflow';
import type { House, Weather, WindExposure } from '../house.js';
import { faces } from './house-nodes.js';

/** Of a house whose file says nothing of the wind. */
const unsheltered: WindExposure = {
  shelter: 1,
  walls: 'correlation',
  outlets: 'clear of the roof',
};

/** Side ratio from which a plan is nearer to 2:1 than to 1:1, by the geometric mean of both; our choice [-]. */
const longPlan = Math.SQRT2;

/**
 * Wind pressure on the boundaries that every house has, minus undisturbed outdoors [Pa]: calm air, faces, outlets
 * above the roof, roof.
 *
 * Walls by the wall correlation of `@evendraft/airflow`, with the wind slowed by the shelter, or by the table of
 * low buildings in the column of the shelter. Outlets above the roof stand in the unsheltered wind, with one
 * coefficient for all directions. Openings in the roof meet the mean of its two slopes by the table; without a
 * pitch they meet what the outlets meet.
 *
 * @param house - the house, for its azimuth, side ratio and exposure
 * @param weather - wind speed at eave height and direction
 * @param densityKgPerM3 - density of the outdoor air [kg/m3]
 * @returns pressures in the order calm air, front, right, back, left, outlets, roof [Pa]
 */
export function windOnHouse(
  house: House,
  weather: Weather,
  densityKgPerM3: number,
): readonly number[] {
  const { wind: exposure = unsheltered, sideRatio } = house;
  const { speedFactor, tableShelter } = shelterClasses[exposure.shelter];
  const { windSpeedMPerS, windFromDeg } = weather;
  const incidenceAt = (quarter: number): number =>
    windIncidence({ windFromDeg, faceAzimuthDeg: house.frontFacesDeg + 90 * quarter });
  const pressure = (coefficient: number, speedMPerS = windSpeedMPerS): number =>
    windPressure({ coefficient, speedMPerS, densityKgPerM3 });
  const fromTable = (surface: LowRiseSurface, incidenceDeg: number): number =>
    lowRiseCoefficient({ surface, shelter: tableShelter, incidenceDeg });

  const onWalls = faces.map((_, quarter) => {
    const incidenceDeg = incidenceAt(quarter);
    const ownRatio = quarter % 2 === 0 ? sideRatio : 1 / sideRatio;
    if (exposure.walls === 'table') return pressure(fromTable(wallOf(ownRatio), incidenceDeg));
    const coefficient = wallPressureCoefficient({ incidenceDeg, sideRatio: ownRatio });
    return pressure(coefficient, speedFactor * windSpeedMPerS);
  });
  const outlet =
    exposure.outlets === 'clear of the roof' ? exposedCapCoefficient : lowOutletCoefficient;
  const { roofPitchDeg } = exposure;
  if (roofPitchDeg === undefined) {
    return [0, ...onWalls, pressure(outlet.coefficient), pressure(outlet.coefficient)];
  }
  // The ridge follows the longer walls, so that the slopes look the way these do.
  const incidenceDeg = incidenceAt(sideRatio >= 1 ? 0 : 1);
  const surface = roofOf(roofPitchDeg, Math.max(sideRatio, 1 / sideRatio));
  const onRoof = (fromTable(surface, incidenceDeg) + fromTable(surface, 180 - incidenceDeg)) / 2;
  return [0, ...onWalls, pressure(outlet.coefficient), pressure(onRoof)];
}

function wallOf(ownRatio: number): LowRiseSurface {
  if (ownRatio > longPlan) return 'long wall';
  return ownRatio < 1 / longPlan ? 'short wall' : 'square-plan wall';
}

/** For pitched roofs the table has only the square plan. */
function roofOf(pitchDeg: number, longerOverShorter: number): LowRiseSurface {
  if (pitchDeg > 30) return 'square-plan steep roof';
  if (pitchDeg >= 10) return 'square-plan roof';
  return longerOverShorter > longPlan ? 'long-plan flat roof' : 'square-plan flat roof';
}
