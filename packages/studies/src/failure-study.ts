import { compileHouse, houseWeather } from '@evendraft/house';
import type { FailureCase } from './failures/failure-cases.js';
import { plainDoors } from './internal/plain-doors.js';
import { pressureRangeStudy, type ZoneRange } from './pressure-range-study.js';
import { situationAirStudy } from './situation-air-study.js';

/** The pressures and the infiltration of a house in which one thing has failed. */
export interface FailureResult {
  readonly item: string;
  readonly failure: FailureCase['failure'];
  readonly zones: readonly ZoneRange[];
  /** Air that enters with nothing switched on, in the weather in which that is most. */
  readonly infiltration?: Infiltration;
  readonly proved: boolean;
}

/** Air that enters a house in its baseline. */
export interface Infiltration {
  readonly weather: string;
  /** From outdoors and buffer spaces [kg/s]. */
  readonly massFlowKgPerS: number;
}

/**
 * Pressures and infiltration with each failure: every case is a house of its own, and all its situations are
 * covered. Infiltration stands at the first airtightness case.
 *
 * @param cases - the cases; one whose house does not compile is left out
 * @param options - signal and progress
 * @returns results in the order of the cases
 */
export async function failureStudy(
  cases: readonly FailureCase[],
  options: {
    readonly signal?: AbortSignal;
    readonly onProgress?: (done: number, of: number) => void;
  } = {},
): Promise<readonly FailureResult[]> {
  const { signal, onProgress } = options;
  const results: FailureResult[] = [];
  for (const [index, { item, failure, house }] of cases.entries()) {
    const result = compileHouse(house);
    if (result.ok) {
      const { compiled } = result;
      const range = await pressureRangeStudy(compiled, signal ? { signal } : {});
      const [most] = house.weathers
        .flatMap((weather): readonly Infiltration[] => {
          const air = situationAirStudy(compiled, {
            state: { running: {}, doors: plainDoors(house) },
            weather: houseWeather(house, weather),
          });
          return air ? [{ weather: weather.name, massFlowKgPerS: air.baselineInflowKgPerS }] : [];
        })
        .sort((one, other) => other.massFlowKgPerS - one.massFlowKgPerS);
      results.push({
        item,
        failure,
        zones: range.zones,
        ...(most === undefined ? {} : { infiltration: most }),
        proved: range.coverage.proved,
      });
    }
    onProgress?.(index + 1, cases.length);
  }
  return results;
}
