import {
  baselineOf,
  countOperatingStates,
  type CompiledHouse,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import type { BalanceQuestion } from '../balance-study.js';
import { mayStandInSeveralWays, type PressureSpan } from '../resolve-columns.js';
import type { ShownRange } from './carries-at-least.js';
import { keepExtremes, type FoundExtreme } from './keep-extremes.js';
import { plainestState } from './plainest-state.js';
import { searchColumns } from './search-columns.js';
import { orderNothing, orderSettings, type OrderedSwitch } from './setting-order.js';
import { solveStates, type SolvePlace } from './solve-states.js';
import { combinationsOf, doorSwitchesOf, stateOf } from './switches.js';

/** Situations that hold every extreme of a house, and how that was shown. */
export interface Extremes {
  /** One for each zone and kind of extreme, and the deepest situations beside them. */
  readonly found: readonly FoundExtreme[];
  readonly coverage: OrderingCoverage;
  /** Combinations of weather, doors and airtightness that were searched, and how many there are. */
  readonly places: { readonly done: number; readonly of: number };
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

/** What is searched, and how the search rests between blocks of solves. */
export interface ExtremeSearch {
  readonly compiled: CompiledHouse;
  readonly weathers: readonly HouseWeather[];
  /** Called between blocks of solves, with how many are done. */
  readonly rest?: (done: number) => Promise<void>;
  /** Ends the search where it answers true; what was searched by then is kept. */
  readonly stopped?: () => boolean;
}

/** Solves in one batch. */
const rowsPerBatch = 512;
/** Times that the laws are compared over a wider range before every setting is gone through. */
const mostAttempts = 5;
/** Most situations that are gone through where nothing is ordered; beyond it the search stays unproved. */
const mostListed = 200_000;

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
 * @param input - house, weathers, how to rest
 * @returns the extremes and the coverage
 */
export async function searchExtremes(input: ExtremeSearch): Promise<Extremes> {
  let needed: ShownRange | undefined = { fromPa: -20, toPa: 5 };
  for (let attempt = 1; ; attempt += 1) {
    const { met, ...extremes } = await searchOnce(input, needed);
    if (extremes.coverage.premiseHolds || needed === undefined) return extremes;
    if (extremes.places.done < extremes.places.of) return extremes;
    if (attempt >= mostAttempts && !mayBeListed(input)) return extremes;
    needed =
      attempt < mostAttempts
        ? {
            fromPa: 1.05 * Math.min(met.fromPa - 1, needed.fromPa),
            toPa: 1.05 * Math.max(met.toPa + 1, needed.toPa),
          }
        : undefined;
  }
}

/** Whether every situation may be solved one by one. */
function mayBeListed({ compiled: { house }, weathers }: ExtremeSearch): boolean {
  const { length: cases } = house.airtightness.cases;
  return countOperatingStates(house) * weathers.length * cases <= mostListed;
}

/** One search with the laws compared over the range needed; without one nothing is ordered. */
async function searchOnce(
  { compiled, weathers, rest, stopped = () => false }: ExtremeSearch,
  needed: ShownRange | undefined,
): Promise<Extremes & { readonly met: ShownRange }> {
  const { house } = compiled;
  const kept = keepExtremes(house.zones);
  const orders: (readonly OrderedSwitch[])[] = [];
  const unsolved: BalanceQuestion[] = [];
  let solves = 0;
  let met: ShownRange = { fromPa: 0, toPa: 0 };
  let premiseHolds = true;
  const doorPositions = [...combinationsOf(doorSwitchesOf(house))];
  let places = 0;
  const meet = ({ lowestPa, highestPa }: PressureSpan, shown: ShownRange): void => {
    const fromPa = Math.min(...lowestPa);
    const toPa = Math.max(...highestPa);
    premiseHolds &&= shown.fromPa <= fromPa && toPa <= shown.toPa;
    met = { fromPa: Math.min(met.fromPa, fromPa), toPa: Math.max(met.toPa, toPa) };
  };

  for (const airtightnessCase of house.airtightness.cases.keys()) {
    for (const weather of weathers) {
      if (stopped()) break;
      const at = { compiled, weather, airtightnessCase };
      const order = needed === undefined ? orderNothing(house) : orderOf(at, needed);
      orders.push(order);
      const shown = shownFor(order);
      for (const doors of doorPositions) {
        if (stopped()) break;
        const [baseline] = solveStates(at, [baselineOf(stateOf({}, doors))]);
        solves += 1;
        const offer = (block: Block, rows: readonly (PressureSpan | undefined)[]): void => {
          solves += rows.length;
          block.states.forEach((state, row) => {
            const question = { state, weather, airtightnessCase };
            const pressures = rows[row];
            if (pressures === undefined || baseline === undefined) {
              unsolved.push(question);
              return;
            }
            meet(pressures, shown);
            kept.add({ question, order, pressures, baseline }, block);
          });
        };
        // More exhaust may turn a flue, and then raise a pressure: there the ordering only bounds.
        const mayTurn = needed !== undefined && mayStandInSeveralWays(compiled);
        if (mayTurn && baseline !== undefined) {
          const search = searchColumns({
            at,
            order,
            doors,
            baseline,
            kept,
            met: (pressures) => {
              meet(pressures, shown);
            },
            solve(state) {
              const block = { states: [state], lowering: true, raising: true };
              offer(block, solveStates(at, block.states));
            },
          });
          solves += search.bounds;
          premiseHolds &&= search.complete;
          places += 1;
          await rest?.(solves);
          continue;
        }
        let whole = true;
        for (const block of blocksOf(order, doors)) {
          whole &&= !stopped();
          if (!whole) break;
          offer(block, solveStates(at, block.states));
          await rest?.(solves);
        }
        if (whole) places += 1;
      }
    }
  }
  const found = kept.all().map((extreme) => {
    if (extreme.kind === 'highest' || extreme.kind === 'largest rise') return extreme;
    const plain = plainestState(compiled, extreme);
    solves += plain.solves;
    return { ...extreme, question: plain.question };
  });
  return {
    ...{ met, found, coverage: { ...namesOf(orders), solves, unsolved, premiseHolds } },
    places: {
      done: places,
      of: house.airtightness.cases.length * weathers.length * doorPositions.length,
    },
  };
}

/** The order of settings. That of a fan that stalls was shown of its envelope only, so it counts for nothing. */
function orderOf(at: SolvePlace, needed: ShownRange): readonly OrderedSwitch[] {
  const { stalls, links } = at.compiled;
  const stalling = new Set(
    stalls?.links.flatMap((link) => {
      const { role } = links[link]!;
      return 'id' in role ? [role.id] : [];
    }),
  );
  return orderSettings(at, needed).map((each) =>
    stalling.has(each.id) ? { ...each, lowering: each.settings, raising: each.settings } : each,
  );
}

interface Block {
  readonly states: readonly OperatingState[];
  readonly lowering: boolean;
  readonly raising: boolean;
}

/** The states to solve, in batches: those that may lower most, then those that may raise most. */
function* blocksOf(
  order: readonly OrderedSwitch[],
  doors: OperatingState['doors'],
): Generator<Block> {
  const alike = order.every(({ lowering, raising }) => String(lowering) === String(raising));
  for (const side of alike ? (['lowering'] as const) : (['lowering', 'raising'] as const)) {
    const settings = order.map((each) => ({ id: each.id, settings: each[side] }));
    const which = { lowering: side === 'lowering', raising: alike || side === 'raising' };
    let states: OperatingState[] = [];
    for (const each of combinationsOf(settings)) {
      states.push(stateOf(each, doors));
      if (states.length < rowsPerBatch) continue;
      yield { states, ...which };
      states = [];
    }
    if (states.length > 0) yield { states, ...which };
  }
}

/** The range in which the premise of every ordered switch was shown. */
function shownFor(order: readonly OrderedSwitch[]): ShownRange {
  return {
    fromPa: Math.max(-Infinity, ...order.map(({ shown }) => shown.fromPa)),
    toPa: Math.min(Infinity, ...order.map(({ shown }) => shown.toPa)),
  };
}

function namesOf(
  orders: readonly (readonly OrderedSwitch[])[],
): Pick<OrderingCoverage, 'ordered' | 'notOrdered'> {
  const ids = (orders[0] ?? []).map(({ id }) => id);
  const isOrdered = (index: number): boolean =>
    orders.some((order) => order[index]!.lowering.length < order[index]!.settings.length);
  return {
    ordered: ids.filter((_, index) => isOrdered(index)),
    notOrdered: ids.filter((_, index) => !isOrdered(index)),
  };
}
