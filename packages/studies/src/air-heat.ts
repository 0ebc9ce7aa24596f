import { StudyArgumentError } from './study-argument-error.js';

/** Specific heat of moist air near room temperature [J/(kg K)]. Source: handbooks of air conditioning, from memory. */
export const airSpecificHeat = 1006;

/**
 * Heat that brings a flow of air from one temperature to another [W].
 *
 * q = m cp (T2 − T1); with air of 1.2041 kg/m3 about 1.21 W per L/s and K, and 1.08 Btu/h per cfm and °F with
 * the handbooks' 0.075 lb/ft3 and 0.24 Btu/(lb °F). Moisture is left out.
 *
 * @param massFlowKgPerS - flow of air [kg/s]
 * @param temperaturesC - where it starts and where it is brought [°C]
 * @returns heat, negative where it is cooled [W]
 */
export function sensibleHeat(
  massFlowKgPerS: number,
  temperaturesC: { readonly from: number; readonly to: number },
): number {
  return massFlowKgPerS * airSpecificHeat * (temperaturesC.to - temperaturesC.from);
}

/** A year of weather: degree days to base temperatures of the caller's choice, or every hour. */
export type YearOfWeather =
  | {
      readonly kind: 'degree days';
      /** Sum over the days of the year of base less mean temperature where that is positive [K d]. */
      readonly heatingKelvinDays: number;
      readonly coolingKelvinDays: number;
    }
  | {
      readonly kind: 'hourly';
      readonly temperaturesC: ArrayLike<number>;
      /** At eave height of the house; still air when absent [m/s]. */
      readonly windSpeedsMPerS?: ArrayLike<number>;
      /** Direction the wind comes from, clockwise from north; from the front when absent [°]. */
      readonly windFromDeg?: ArrayLike<number>;
      /** At the place, not reduced to sea level; standard at the house's altitude when absent [Pa]. */
      readonly pressuresPa?: ArrayLike<number>;
    };

/** What a flow of outdoor air costs over a year. */
export interface YearlyAirHeat {
  /** Heat to bring it up to the room's temperature, or to the base of the degree days [kWh]. */
  readonly heatingKWh: number;
  /** Sensible cooling to bring it down [kWh]. */
  readonly coolingKWh: number;
}

/**
 * Heat and cooling that a flow of outdoor air takes over a year, where it flows some hours a day.
 *
 * E = m cp DD 24 h/d · (hours/24), or the same summed over hours. The hours of use are spread evenly over the
 * day and the year.
 *
 * @param flow - mass flow while it runs [kg/s], hours a day [h], and the room's temperature [°C]
 * @param year - the weather
 * @returns energy of a year; sensible heat only
 * @throws StudyArgumentError where the hours are not from 0 to 24
 */
export function yearlyAirHeat(
  flow: {
    readonly massFlowKgPerS: number;
    readonly hoursPerDay: number;
    readonly roomTemperatureC: number;
  },
  year: YearOfWeather,
): YearlyAirHeat {
  const { massFlowKgPerS, hoursPerDay, roomTemperatureC } = flow;
  if (!(hoursPerDay >= 0 && hoursPerDay <= 24)) {
    throw new StudyArgumentError('hoursPerDay', hoursPerDay, '0 to 24');
  }
  const perKelvinHour = (massFlowKgPerS * airSpecificHeat * (hoursPerDay / 24)) / 1000;
  if (year.kind === 'degree days') {
    return {
      heatingKWh: perKelvinHour * 24 * year.heatingKelvinDays,
      coolingKWh: perKelvinHour * 24 * year.coolingKelvinDays,
    };
  }
  let heating = 0;
  let cooling = 0;
  for (let hour = 0; hour < year.temperaturesC.length; hour += 1) {
    const difference = roomTemperatureC - year.temperaturesC[hour]!;
    if (difference > 0) heating += difference;
    else cooling -= difference;
  }
  return { heatingKWh: perKelvinHour * heating, coolingKWh: perKelvinHour * cooling };
}

/**
 * Electricity of a fan over a year [kWh].
 *
 * P = Q dP/eta while it runs.
 *
 * @param fan - flow [m³/s], pressure rise [Pa], efficiency of fan and motor together [-], hours a day [h]
 * @returns energy of a year of 365 days [kWh]
 */
export function yearlyFanEnergy(fan: {
  readonly volumeFlowM3PerS: number;
  readonly pressureRisePa: number;
  readonly efficiency: number;
  readonly hoursPerDay: number;
}): number {
  if (!(fan.efficiency > 0 && fan.efficiency <= 1)) {
    throw new StudyArgumentError('efficiency', fan.efficiency, 'above 0, up to 1');
  }
  const powerW = (fan.volumeFlowM3PerS * fan.pressureRisePa) / fan.efficiency;
  return (powerW * fan.hoursPerDay * 365) / 1000;
}
