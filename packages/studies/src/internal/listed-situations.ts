import { houseWeather, operatingStates, type CompiledHouse } from '@evendraft/house';
import { baselineStudy, balanceStudy, type BalanceQuestion } from '../balance-study.js';
import type { BaselineResult } from '../balance-study.js';
import type { StateBalance, UnsolvedState } from '../state-balance.js';

/** Every situation of a house in the order of study: airtightness slowest, then weather, then state. */
export interface ListedSituations {
  readonly count: number;
  /** How many baselines the first situations share among them. */
  baselinesOf(situations: number): number;
  /** Solves the situation at a place of the order. */
  solve(place: number): StateBalance | UnsolvedState;
}

/**
 * The situations of a house, to be solved by their place in the order of study, in this thread or in another.
 *
 * A baseline is solved once for each weather, door position and airtightness case.
 *
 * @param compiled - the compiled house
 * @returns how many there are, and how to solve one
 */
export function listedSituations(compiled: CompiledHouse): ListedSituations {
  const { house } = compiled;
  const states = operatingStates(house);
  const weathers = house.weathers.map((each) => houseWeather(house, each));
  const solve = solverWithBaselines(compiled);
  const questionAt = (place: number): BalanceQuestion => {
    const block = Math.floor(place / states.length);
    return {
      state: states[place % states.length]!,
      weather: weathers[block % weathers.length]!,
      airtightnessCase: Math.floor(block / weathers.length),
    };
  };
  return {
    count: states.length * weathers.length * house.airtightness.cases.length,
    baselinesOf(situations) {
      const keys = new Set<string>();
      for (let place = 0; place < situations; place += 1) keys.add(baselineKey(questionAt(place)));
      return keys.size;
    },
    solve: (place) => solve(questionAt(place)),
  };
}

/**
 * Solves situations, each of their baselines once.
 *
 * @param compiled - the compiled house
 * @returns how to solve a situation
 */
export function solverWithBaselines(
  compiled: CompiledHouse,
): (question: BalanceQuestion) => StateBalance | UnsolvedState {
  const baselines = new Map<string, BaselineResult>();
  return (question) => {
    const key = baselineKey(question);
    const baseline = baselines.get(key) ?? baselineStudy(compiled, question);
    baselines.set(key, baseline);
    return balanceStudy(compiled, question, baseline);
  };
}

/**
 * What situations share that have one baseline.
 *
 * @param question - the situation
 * @returns equal texts for equal baselines
 */
export function baselineKey({ state, weather, airtightnessCase }: BalanceQuestion): string {
  return JSON.stringify([airtightnessCase, weather.name, Object.entries(state.doors)]);
}
