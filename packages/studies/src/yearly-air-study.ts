import type { CompiledHouse, OperatingState } from '@evendraft/house';
import type { YearOfWeather } from './air-heat.js';
import { answeredInOrder } from './internal/answered-in-order.js';
import { hoursAlike, type HourWidths } from './internal/hours-alike.js';
import { situationSolver } from './internal/situation-solver.js';
import { StudyArgumentError } from './study-argument-error.js';
import type { PooledOptions } from './study-options.js';

/** Hours of weather with all that the balance of a house needs. */
export type HourlyYear = Extract<YearOfWeather, { readonly kind: 'hourly' }>;

/** What the air that devices draw in takes over a year, each hour by the balance in its own weather; plain JSON. */
export interface YearlyAirStudy {
  readonly question: 'air of a year';
  /** Heat that brings induced air up to the rooms' temperature [kWh]. */
  readonly heatingKWh: number;
  /** Sensible cooling of induced air down to it [kWh]. */
  readonly coolingKWh: number;
  /** Air that the devices draw in beyond what enters without them, mean of the hours [kg/s]. */
  readonly inducedKgPerS: number;
  /** Hours of the table. */
  readonly hours: number;
  /** Weathers that were solved; hours alike share one. */
  readonly weathersSolved: number;
  /** Hours count as alike within these. */
  readonly alikeWithin: HourWidths;
  /** Hours whose weather could not be solved; they are left out, and the others stand for them. */
  readonly unsolvedHours: number;
  /** What the table did not hold and was taken instead. */
  readonly taken: readonly (
    'still air' | 'wind from the front' | 'standard pressure at the altitude'
  )[];
}

/** At most so many weathers are solved; hours are taken together until they are no more. */
const mostWeathers = 400;

/**
 * The air that devices draw in over a year: the balance of the house with and without them in each hour's
 * temperature, wind and pressure, and the heat of the difference.
 *
 * E = Σ (hours of use/24) (q_with − q_without) 1 h. The hours of use are spread evenly over the day and the
 * year. Hours that are alike share one balance in their mean weather, a simplification that is counted in the
 * answer. Rooms keep the temperatures of the house file in every hour.
 *
 * @param compiled - the compiled house
 * @param of - what runs, hours a day [h], the year
 * @param options - signal, progress over the weathers that are solved, workers
 * @returns energy of a year, sensible heat only; the same whoever solves it
 * @throws StudyArgumentError where the hours are not from 0 to 24, or columns of the year differ in length
 */
export async function yearlyAirStudy(
  compiled: CompiledHouse,
  of: {
    readonly state: OperatingState;
    readonly hoursPerDay: number;
    readonly year: HourlyYear;
  },
  options: Omit<PooledOptions, 'whenStopped'> = {},
): Promise<YearlyAirStudy> {
  const { state, hoursPerDay, year } = of;
  const { house } = compiled;
  if (!(hoursPerDay >= 0 && hoursPerDay <= 24)) {
    throw new StudyArgumentError('hoursPerDay', hoursPerDay, '0 to 24');
  }
  const hours = year.temperaturesC.length;
  for (const column of [year.windSpeedsMPerS, year.windFromDeg, year.pressuresPa]) {
    if (column !== undefined && column.length !== hours) {
      throw new StudyArgumentError('year', column.length, `columns of ${hours} hours`);
    }
  }
  const { groups, widths } = hoursAlike(year, { fromDeg: house.frontFacesDeg, mostWeathers });
  let [heatingJ, coolingJ, inducedKg, unsolvedHours] = [0, 0, 0, 0];
  const solver = situationSolver(compiled, options);
  const left = [...groups];
  const answers = answeredInOrder(
    () => left.shift(),
    (group) => solver.ask({ kind: 'hour', state, hours: group }),
  );
  try {
    let done = 0;
    for await (const { question: group, answer: air } of answers) {
      if (air === null) {
        unsolvedHours += group.hours;
      } else {
        const seconds = group.hours * 3600;
        if (air.inducedHeatW > 0) heatingJ += air.inducedHeatW * seconds;
        else coolingJ -= air.inducedHeatW * seconds;
        inducedKg += (air.inflowKgPerS - air.baselineInflowKgPerS) * seconds;
      }
      done += 1;
      options.onProgress?.(done, groups.length);
      options.signal?.throwIfAborted();
    }
  } finally {
    solver.close();
  }
  const solvedHours = hours - unsolvedHours;
  // Hours that were not solved are taken to be like the mean of the others.
  const whole = solvedHours === 0 ? 0 : hours / solvedHours;
  const inUse = (hoursPerDay / 24) * whole;
  return {
    question: 'air of a year',
    heatingKWh: (heatingJ * inUse) / 3.6e6,
    coolingKWh: (coolingJ * inUse) / 3.6e6,
    inducedKgPerS: solvedHours === 0 ? 0 : inducedKg / (solvedHours * 3600),
    hours,
    weathersSolved: groups.length,
    alikeWithin: widths,
    unsolvedHours,
    taken: [
      ...(year.windSpeedsMPerS === undefined ? (['still air'] as const) : []),
      ...(year.windSpeedsMPerS !== undefined && year.windFromDeg === undefined
        ? (['wind from the front'] as const)
        : []),
      ...(year.pressuresPa === undefined ? (['standard pressure at the altitude'] as const) : []),
    ],
  };
}
