import {
  houseScenario,
  type CompiledHouse,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import { batchStatuses, solveBatch } from '@evendraft/network';
import { mayStandInSeveralWays, resolveColumns, type PressureSpan } from '../resolve-columns.js';
import { stackScenarios } from './stack-scenarios.js';

/** Where states are solved: one house, weather and airtightness. */
export interface SolvePlace {
  readonly compiled: CompiledHouse;
  readonly weather: HouseWeather;
  readonly airtightnessCase: number;
}

/**
 * Pressures of many states in one batch [Pa]; one by one where columns of shafts or flues can stand either way.
 *
 * @param place - house, weather and airtightness
 * @param states - the states, at least one
 * @returns pressures of the house's zones over all stable balances, one row a state; undefined where a state could
 * not be solved
 */
export function solveStates(
  { compiled, weather, airtightnessCase }: SolvePlace,
  states: readonly OperatingState[],
): readonly (PressureSpan | undefined)[] {
  if (mayStandInSeveralWays(compiled)) {
    return states.map((state) => {
      const { result, span } = resolveColumns(compiled, { state, weather, airtightnessCase });
      if (result.status !== 'solved') return undefined;
      return span ?? onlyOne(result.pressuresPa.slice(0, compiled.house.zones.length));
    });
  }
  const scenarios = states.map(
    (state) => houseScenario(compiled, { state, weather, airtightnessCase }).scenario,
  );
  const result = solveBatch(compiled.network, stackScenarios(scenarios));
  const nodes = compiled.network.description.zones.length;
  const zones = compiled.house.zones.length;
  return states.map((_, row) =>
    batchStatuses[result.status[row]!] === 'solved'
      ? onlyOne(result.pressuresPa.slice(row * nodes, row * nodes + zones))
      : undefined,
  );
}

function onlyOne(pressuresPa: Float64Array): PressureSpan {
  return { lowestPa: pressuresPa, highestPa: pressuresPa };
}
