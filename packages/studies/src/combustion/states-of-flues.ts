import type { CompiledHouse } from '@evendraft/house';
import { findDraftRoots, type DraftRoots } from './find-draft-roots.js';
import {
  fluesOfSituation,
  type FlueSituation,
  type FluesOfSituation,
} from './flues-of-situation.js';
import type { HouseWithoutFlues } from './house-without-flues.js';

/** The flues of one situation with every state that they can have. */
export interface StatesOfFlues {
  readonly set: FluesOfSituation;
  readonly found: DraftRoots;
}

/**
 * A function that finds the states of the flues of a house, each situation once.
 *
 * Appliances on one chimney ask for the same situations, and each asks for that with nothing firing.
 *
 * @param compiled - the compiled house
 * @param rest - its network without flues
 * @returns the function; what it found lives as long as it does
 */
export function statesOfFlues(
  compiled: CompiledHouse,
  rest: HouseWithoutFlues,
): (situation: FlueSituation) => StatesOfFlues {
  const known = new Map<string, StatesOfFlues>();
  return (situation) => {
    const { state, weather, airtightnessCase, columns = [] } = situation;
    const sorted = (names: Readonly<Record<string, string>> = {}) => Object.entries(names).sort();
    const key = JSON.stringify([
      ...[state.running, state.doors, state.firing].map(sorted),
      ...[weather.name, airtightnessCase, columns],
    ]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const set = fluesOfSituation(compiled, rest, situation);
    const states = { set, found: findDraftRoots(set) };
    known.set(key, states);
    return states;
  };
}
