import {
  houseScenario,
  houseWeather,
  type CompiledHouse,
  type OperatingState,
} from '@evendraft/house';
import { boundBalances } from '@evendraft/network';
import { severalWays, type PressureSpan } from '../resolve-columns.js';
import type {
  Asked,
  AskedKind,
  SituationAnswers,
  SituationReply,
} from '../workers/situation-request.js';
import { hourAir } from './hour-air.js';
import { listedSituations, solverWithBaselines } from './listed-situations.js';
import { plainestState } from './plainest-state.js';
import { solveStates, type SolvePlace } from './solve-states.js';

/** Answers a request at once. */
export type AnswerSituations = <Kind extends AskedKind>(
  request: Asked<Kind>,
) => SituationAnswers[Kind];

/**
 * All that may be asked of the situations of a house, answered in this thread; a worker answers the same, bit for
 * bit.
 *
 * @param compiled - the compiled house
 * @returns a function that answers a request
 */
export function situationAnswers(compiled: CompiledHouse): AnswerSituations {
  const { house } = compiled;
  const weathers = house.weathers.map((each) => houseWeather(house, each));
  const listed = once(() => listedSituations(compiled));
  const solve = solverWithBaselines(compiled);
  const placeOf = (at: Asked<'bounds'>['at']): SolvePlace => ({
    compiled,
    weather: weathers[at.weather]!,
    airtightnessCase: at.airtightnessCase,
  });
  const answer = (request: Asked): SituationReply => {
    switch (request.kind) {
      case 'situations':
        return Array.from({ length: request.end - request.first }, (_, index) =>
          listed().solve(request.first + index),
        );
      case 'balances':
        return request.questions.map(({ state, ...at }) => solve({ ...placeOf(at), state }));
      case 'pressures':
        return solveStates(placeOf(request.at), request.states);
      case 'bounds':
        return request.states.map((state) => boundOf(placeOf(request.at), state));
      case 'hour':
        return hourAir(compiled, request.state, request.hours) ?? null;
      case 'plainest':
        return plainestState(placeOf(request.at), request.extreme);
    }
  };
  return answer as AnswerSituations;
}

/** Bounds on the pressures of the house's zones over all balances of a state [Pa]. */
function boundOf(
  { compiled, weather, airtightnessCase }: SolvePlace,
  state: OperatingState,
): PressureSpan {
  const situation = { state, weather, airtightnessCase };
  const { scenario } = houseScenario(compiled, situation);
  const { description, twoState } = severalWays(compiled, situation, scenario) ?? {
    description: compiled.network.description,
    twoState: [],
  };
  const bounds = boundBalances(description, scenario, { twoState });
  const zones = compiled.house.zones.length;
  return {
    lowestPa: bounds?.lowestPa.slice(0, zones) ?? new Float64Array(zones).fill(-Infinity),
    highestPa: bounds?.highestPa.slice(0, zones) ?? new Float64Array(zones).fill(Infinity),
  };
}

function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => (made ??= { value: make() }).value;
}
