import {
  countOperatingStates,
  houseWeather,
  operatingStates,
  stateLabel,
  type CompiledHouse,
} from '@evendraft/house';
import { nextTurn } from './internal/next-turn.js';
import { solveStates } from './internal/solve-states.js';
import { pressureRangeStudy } from './pressure-range-study.js';
import type { Situation } from './state-balance.js';
import { StudyArgumentError } from './study-argument-error.js';
import type { WorstCaseOptions } from './study-options.js';

/** A pressure difference between two zones in one situation. */
export interface ZoneDifference extends Situation {
  /** First zone minus second, both at their floors [Pa]. */
  readonly differencePa: number;
}

/** How far two zones draw apart, either way. */
export interface DifferenceRange {
  readonly between: readonly [string, string];
  /** Bounds on the first zone's pressure minus the second's over all situations [Pa]. */
  readonly leastPa: number;
  readonly mostPa: number;
  /** The situations of the bounds; absent where the bounds come from each zone's own range. */
  readonly situations?: readonly [least: ZoneDifference, most: ZoneDifference];
}

/** Differences between zones over all states, weathers and airtightness cases; plain JSON. */
export interface ZoneDifferenceStudy {
  readonly question: 'zone differences';
  readonly pairs: readonly DifferenceRange[];
  /** `every state` was solved, or the differences are only bounded, which may be far too wide. */
  readonly method: 'every state' | 'bounded';
  readonly solves: number;
  readonly unsolved: number;
}

const rowsPerBatch = 512;

/**
 * Finds how far pairs of zones draw apart: what holds a door shut, or drives air out of a garage.
 *
 * More exhaust need not widen a difference, so no state is left out. A house with more situations than
 * `listUpTo` is only bounded: no difference is below the first zone's lowest less the second's highest.
 *
 * @param compiled - the compiled house
 * @param pairs - ids of two zones each; the two sides of every door when empty
 * @param options - signal, progress, and most situations to solve one by one; 200,000 when absent
 * @returns the range of every pair
 * @throws StudyArgumentError where a zone is unknown
 */
export async function zoneDifferenceStudy(
  compiled: CompiledHouse,
  pairs: readonly (readonly [string, string])[],
  options: Pick<WorstCaseOptions, 'signal' | 'onProgress' | 'listUpTo'> = {},
): Promise<ZoneDifferenceStudy> {
  const { house } = compiled;
  const { listUpTo = 200_000, signal, onProgress } = options;
  const asked = pairs.length > 0 ? pairs : house.doors.map(({ between }) => between);
  const places = asked.map((pair) => pair.map((id) => zoneIndex(compiled, id)) as [number, number]);
  const total =
    countOperatingStates(house) * house.weathers.length * house.airtightness.cases.length;
  if (total > listUpTo) return bounded(compiled, { asked, places, signal });

  const least = asked.map((): ZoneDifference | undefined => undefined);
  const most = asked.map((): ZoneDifference | undefined => undefined);
  const states = operatingStates(house);
  let done = 0;
  let unsolved = 0;
  for (const [airtightnessCase, { name: airtightness }] of compiled.leakage.entries()) {
    for (const weather of house.weathers.map((each) => houseWeather(house, each))) {
      for (let first = 0; first < states.length; first += rowsPerBatch) {
        const block = states.slice(first, first + rowsPerBatch);
        solveStates({ compiled, weather, airtightnessCase }, block).forEach((row, index) => {
          if (row === undefined) unsolved += 1;
          else {
            const state = block[index]!;
            places.forEach(([one, other], pair) => {
              const label = stateLabel(house, state);
              const found = { state, label, weather: weather.name, airtightness };
              // Of several balances that which sets the two furthest apart, or a bound on it.
              const low = row.lowestPa[one]! - row.highestPa[other]!;
              const high = row.highestPa[one]! - row.lowestPa[other]!;
              if (low < (least[pair]?.differencePa ?? Infinity)) {
                least[pair] = { ...found, differencePa: low };
              }
              if (high > (most[pair]?.differencePa ?? -Infinity)) {
                most[pair] = { ...found, differencePa: high };
              }
            });
          }
        });
        done += block.length;
        onProgress?.(done, total);
        await nextTurn();
        signal?.throwIfAborted();
      }
    }
  }
  return {
    question: 'zone differences',
    method: 'every state',
    solves: done,
    unsolved,
    pairs: asked.flatMap((between, pair) => {
      const [low, high] = [least[pair], most[pair]];
      if (low === undefined || high === undefined) return [];
      const { differencePa: leastPa } = low;
      return [{ between, leastPa, mostPa: high.differencePa, situations: [low, high] as const }];
    }),
  };
}

async function bounded(
  compiled: CompiledHouse,
  of: {
    readonly asked: readonly (readonly [string, string])[];
    readonly places: readonly (readonly [number, number])[];
    readonly signal: AbortSignal | undefined;
  },
): Promise<ZoneDifferenceStudy> {
  const { signal } = of;
  const range = await pressureRangeStudy(compiled, signal === undefined ? {} : { signal });
  const zone = (id: string) => range.zones.find((each) => each.zone === id);
  return {
    question: 'zone differences',
    method: 'bounded',
    solves: range.solves,
    unsolved: range.unsolved.length,
    pairs: of.asked.flatMap((between) => {
      const [one, other] = [zone(between[0]), zone(between[1])];
      if (one === undefined || other === undefined) return [];
      return [
        {
          between,
          leastPa: one.lowest.pressurePa - other.highest.pressurePa,
          mostPa: one.highest.pressurePa - other.lowest.pressurePa,
        },
      ];
    }),
  };
}

function zoneIndex({ house }: CompiledHouse, id: string): number {
  const index = house.zones.findIndex((zone) => zone.id === id);
  if (index < 0) throw new StudyArgumentError('pairs', id, 'ids of zones of the house');
  return index;
}
