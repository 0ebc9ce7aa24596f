import { answeredInOrder } from './answered-in-order.js';
import type { SearchedPlace } from './search-places.js';
import type { SearchedStates, SearchTally } from './search-tally.js';
import type { SituationSolver } from './situation-solver.js';
import { combinationsOf, stateOf } from './switches.js';

/** What is searched, who solves, and where it is booked. */
export interface PlacesSearch {
  readonly places: readonly SearchedPlace[];
  readonly solver: SituationSolver;
  readonly tally: SearchTally;
  /** Asked after each answer whether to go on. */
  readonly goesOn: () => boolean;
}

/**
 * Solves the states that may hold an extreme by the ordering of settings, block after block: those that may lower
 * most, then those that may raise most.
 *
 * @param search - places, solver, tally
 * @param rowsPerBlock - states that are solved as one batch
 */
export async function searchBlocks(
  { places, solver, tally, goesOn }: PlacesSearch,
  rowsPerBlock: number,
): Promise<void> {
  const blocks = blocksOf(places, rowsPerBlock);
  const answers = answeredInOrder(
    () => {
      const next = blocks.next();
      return next.done === true ? undefined : next.value;
    },
    ({ place, of }) => solver.ask({ kind: 'pressures', at: place.at, states: of.states }),
  );
  for await (const { question, answer } of answers) {
    const { place, of, last } = question;
    tally.takeStates(place, of, answer);
    if (last) tally.settle(place.states);
    if (!goesOn()) return;
  }
}

interface Block {
  readonly place: SearchedPlace;
  readonly of: SearchedStates;
  /** Whether it is the last one of its place. */
  readonly last: boolean;
}

function* blocksOf(
  places: readonly SearchedPlace[],
  rowsPerBlock: number,
): Generator<Block, undefined> {
  for (const place of places) {
    let before: SearchedStates | undefined;
    for (const of of statesOf(place, rowsPerBlock)) {
      if (before !== undefined) yield { place, of: before, last: false };
      before = of;
    }
    if (before !== undefined) yield { place, of: before, last: true };
  }
  return undefined;
}

function* statesOf(
  { order, doors }: SearchedPlace,
  rowsPerBlock: number,
): Generator<SearchedStates> {
  const alike = order.every(({ lowering, raising }) => String(lowering) === String(raising));
  for (const side of alike ? (['lowering'] as const) : (['lowering', 'raising'] as const)) {
    const settings = order.map((each) => ({ id: each.id, settings: each[side] }));
    const which = { lowering: side === 'lowering', raising: alike || side === 'raising' };
    let states: ReturnType<typeof stateOf>[] = [];
    for (const each of combinationsOf(settings)) {
      states.push(stateOf(each, doors));
      if (states.length < rowsPerBlock) continue;
      yield { states, ...which };
      states = [];
    }
    if (states.length > 0) yield { states, ...which };
  }
}
