import { standardPressure } from '@evendraft/airflow';
import {
  houseWeather,
  type CompiledHouse,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import { situationAirStudy, type SituationAir } from '../situation-air-study.js';
import type { HourGroup } from './hours-alike.js';

/** What a year needs of the air of one hour. */
export type HourAir = Pick<SituationAir, 'inducedHeatW' | 'inflowKgPerS' | 'baselineInflowKgPerS'>;

/**
 * The air of a state in the mean weather of hours that are alike.
 *
 * @param compiled - the compiled house
 * @param state - what runs
 * @param hours - the hours
 * @returns inflow and heat; undefined where the state or its baseline could not be solved
 */
export function hourAir(
  compiled: CompiledHouse,
  state: OperatingState,
  hours: HourGroup,
): HourAir | undefined {
  const air = situationAirStudy(compiled, { state, weather: weatherOf(compiled, hours) });
  if (air === undefined) return undefined;
  const { inducedHeatW, inflowKgPerS, baselineInflowKgPerS } = air;
  return { inducedHeatW, inflowKgPerS, baselineInflowKgPerS };
}

function weatherOf({ house }: CompiledHouse, group: HourGroup): HouseWeather {
  const { temperatureC, windSpeedMPerS, windFromDeg, pressurePa } = group;
  // Air of the house is that of its altitude; another pressure of the day counts as the altitude that has it.
  const altitudeM = pressurePa === undefined ? house.altitudeM : altitudeOf(pressurePa);
  return houseWeather(
    { ...house, altitudeM },
    {
      name: 'hour of a year',
      origin: 'weather',
      outdoorTemperatureC: temperatureC,
      windSpeedMPerS,
      windFromDeg,
    },
  );
}

/** The altitude at which the standard atmosphere has a pressure [m]; found by halving. */
function altitudeOf(pressurePa: number): number {
  let [low, high] = [-500, 11_000];
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (standardPressure(middle) > pressurePa) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
