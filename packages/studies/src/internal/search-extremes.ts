import { baselineOf, countOperatingStates, type CompiledHouse } from '@evendraft/house';
import type { BalanceQuestion } from '../balance-study.js';
import { mayStandInSeveralWays } from '../resolve-columns.js';
import type { Stopped } from '../study-options.js';
import { answeredInOrder } from './answered-in-order.js';
import type { ShownRange } from './carries-at-least.js';
import type { FoundExtreme } from './keep-extremes.js';
import { searchBlocks } from './search-blocks.js';
import { searchColumns } from './search-columns.js';
import { searchedPlaces, type SearchedPlace } from './search-places.js';
import { searchTally, type SearchTally } from './search-tally.js';
import type { SituationSolver } from './situation-solver.js';
import { stateOf } from './switches.js';

/** Situations that hold every extreme of a house, and how that was shown. */
export interface Extremes {
  /** One for each zone and kind of extreme, and the deepest situations beside them. */
  readonly found: readonly FoundExtreme[];
  readonly coverage: OrderingCoverage;
  /** Situations that were solved or covered, and how many there are. */
  readonly settled: Stopped;
}

/** What was shown law against law, and what was gone through. */
export interface OrderingCoverage {
  /** Switches of which only the settings that carry most or least outward were solved. */
  readonly ordered: readonly string[];
  /** Switches of which every setting was solved, because the ordering does not hold or was not shown. */
  readonly notOrdered: readonly string[];
  readonly solves: number;
  readonly unsolved: readonly BalanceQuestion[];
  /** True where every pressure stayed in the range in which the laws were compared. */
  readonly premiseHolds: boolean;
}

/** What is searched, who solves, and how it is watched. */
export interface ExtremeSearch {
  readonly compiled: CompiledHouse;
  readonly solver: SituationSolver;
  /** Told how many situations are settled of all, work that comes after them counted as a share of them. */
  readonly onProgress?: ((done: number, of: number) => void) | undefined;
  /** Ends the search where it answers true; what was searched by then is kept. */
  readonly stopped?: () => boolean;
}

/** Solves in one batch; where each may take a search of its own, so few that a stop is heard. */
const rowsPerBatch = 512;
const searchesPerBatch = 8;
/** Times that the laws are compared over a wider range before every setting is gone through. */
const mostAttempts = 5;
/** Most situations that are gone through where nothing is ordered; beyond it the search stays unproved. */
const mostListed = 200_000;
/** What finding the plainest states of extremes takes, of the whole; measured in large houses with flues. */
const plainShare = 0.25;

/**
 * Finds the situations with the lowest and highest pressure and the largest fall and rise of every zone, by
 * the ordering of settings.
 *
 * Weather, doors and airtightness are gone through; so is every switch whose settings are not ordered. For the
 * others only the settings that carry most outward are solved, and for the highest pressures those that carry
 * least. Between the two lies every pressure of the house, which must stay where the laws were compared; where
 * it does not, they are compared further, and at last nothing is ordered, or where that would be too many
 * situations, the premise is reported not to hold. Where air may go either way in a shaft
 * or flue, the ordering only bounds, and what the bounds leave open is searched.
 *
 * @param input - house, solver, how it is watched
 * @returns the extremes and the coverage, the same whoever solves
 */
export async function searchExtremes(input: ExtremeSearch): Promise<Extremes> {
  let needed: ShownRange | undefined = { fromPa: -20, toPa: 5 };
  for (let attempt = 1; ; attempt += 1) {
    const isLast =
      needed === undefined || (attempt >= mostAttempts && !mayBeListed(input.compiled));
    const { met, isStopped, ...extremes } = await searchOnce(input, { needed, isLast });
    if (isLast || isStopped || extremes.coverage.premiseHolds) return extremes;
    needed =
      attempt < mostAttempts && needed !== undefined
        ? {
            fromPa: 1.05 * Math.min(met.fromPa - 1, needed.fromPa),
            toPa: 1.05 * Math.max(met.toPa + 1, needed.toPa),
          }
        : undefined;
  }
}

/** Whether every situation may be solved one by one. */
function mayBeListed({ house }: CompiledHouse): boolean {
  const { weathers, airtightness } = house;
  return countOperatingStates(house) * weathers.length * airtightness.cases.length <= mostListed;
}

/**
 * One search with the laws compared over the range needed; without one nothing is ordered. Unless it is the last,
 * it ends as soon as its premise is seen not to hold.
 */
async function searchOnce(
  { compiled, solver, onProgress, stopped = () => false }: ExtremeSearch,
  { needed, isLast }: { readonly needed: ShownRange | undefined; readonly isLast: boolean },
): Promise<Extremes & { readonly met: ShownRange; readonly isStopped: boolean }> {
  const places = searchedPlaces(compiled, needed);
  const tally = searchTally(compiled.house.zones);
  const of = places.reduce((sum, { states }) => sum + states, 0);
  const goesOn = (): boolean => {
    onProgress?.(Math.floor((1 - plainShare) * tally.settled), of);
    return !stopped() && (isLast || tally.premiseHolds);
  };
  await solveBaselines(places, { solver, tally, stopped });
  // More exhaust may turn a flue, and then raise a pressure: there the ordering only bounds.
  const severalWays = mayStandInSeveralWays(compiled);
  const bounded = (place: SearchedPlace): boolean =>
    severalWays && needed !== undefined && tally.baselineOf(place) !== undefined;
  const search = { solver, tally, goesOn };
  if (!stopped()) {
    await searchColumns(compiled, { ...search, places: places.filter(bounded) });
  }
  if (!stopped()) {
    const rest = places.filter((place) => !bounded(place));
    await searchBlocks({ ...search, places: rest }, severalWays ? searchesPerBatch : rowsPerBatch);
  }
  const isWhole = tally.settled === of;
  const plain = isWhole
    ? await plainestOf(tally.kept.all(), {
        solver,
        onFound: (found, all) => {
          onProgress?.(Math.floor(of * (1 - plainShare + (plainShare * found) / all)), of);
          return !stopped();
        },
      })
    : { found: tally.kept.all(), solves: 0 };
  return {
    found: plain.found,
    coverage: {
      ...namesOf(places),
      solves: tally.solves + plain.solves,
      unsolved: tally.unsolved,
      premiseHolds: tally.premiseHolds,
    },
    settled: { done: tally.settled, of },
    met: tally.met,
    isStopped: stopped(),
  };
}

async function solveBaselines(
  places: readonly SearchedPlace[],
  of: {
    readonly solver: SituationSolver;
    readonly tally: SearchTally;
    readonly stopped: () => boolean;
  },
): Promise<void> {
  const left = [...places];
  const answers = answeredInOrder(
    () => left.shift(),
    ({ at, doors }) =>
      of.solver.ask({ kind: 'pressures', at, states: [baselineOf(stateOf({}, doors))] }),
  );
  for await (const { question, answer } of answers) {
    of.tally.takeBaseline(question, answer[0]);
    if (of.stopped()) return;
  }
}

/** Extremes with the plainest states that tie with those of low ones; as they are where it is ended before. */
async function plainestOf(
  extremes: readonly FoundExtreme[],
  of: {
    readonly solver: SituationSolver;
    /** Told how many are found of all; answers whether to go on. */
    readonly onFound: (found: number, all: number) => boolean;
  },
): Promise<{ readonly found: readonly FoundExtreme[]; readonly solves: number }> {
  const found = [...extremes];
  const low = [...extremes.entries()].filter(
    ([, { kind }]) => kind !== 'highest' && kind !== 'largest rise',
  );
  const left = [...low];
  let solves = 0;
  let done = 0;
  const answers = answeredInOrder(
    () => left.shift(),
    ([
      ,
      {
        question: { state },
        place,
        pressures,
      },
    ]) =>
      of.solver.ask({
        kind: 'plainest',
        at: place.at,
        extreme: { state, order: place.order, pressures },
      }),
  );
  for await (const { question: asked, answer } of answers) {
    const [index, extreme] = asked;
    found[index] = { ...extreme, question: extreme.place.question(answer.state) };
    solves += answer.solves;
    done += 1;
    if (!of.onFound(done, low.length)) break;
  }
  return { found, solves };
}

function namesOf(
  places: readonly SearchedPlace[],
): Pick<OrderingCoverage, 'ordered' | 'notOrdered'> {
  const ids = (places[0]?.order ?? []).map(({ id }) => id);
  const isOrdered = (index: number): boolean =>
    places.some(({ order }) => order[index]!.lowering.length < order[index]!.settings.length);
  return {
    ordered: ids.filter((_, index) => isOrdered(index)),
    notOrdered: ids.filter((_, index) => !isOrdered(index)),
  };
}
