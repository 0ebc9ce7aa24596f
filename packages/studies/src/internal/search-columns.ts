import type { CompiledHouse, OperatingState } from '@evendraft/house';
import type { PressureSpan } from '../resolve-columns.js';
import { answeredInOrder } from './answered-in-order.js';
import type { PlacesSearch } from './search-blocks.js';
import type { SearchedPlace } from './search-places.js';
import type { SearchTally } from './search-tally.js';
import type { OrderedSwitch } from './setting-order.js';
import { combinationsOf, stateOf } from './switches.js';

/** By how much a bound must beat an extreme before it is followed; states within it tie [Pa]. */
const beatenByPa = 5e-5;
/** Bounds that the search of one place may solve before it is given up. */
const mostBounds = 20_000;

/**
 * Searches the states of a house in whose shafts and flues air may go either way.
 *
 * With the air of every column held, the ordering of settings holds; so the lowest pressure of any state is not
 * below the bound over all airs of the columns, with what is not yet decided set to carry most outward. Sets of
 * states whose bound beats no extreme are left out, the others are split, switch by switch, down to single states
 * that are solved as they are. Likewise above. The states that carry most and least outward are solved first, and the
 * place with the lowest pressure is searched first, of all weathers, doors and airtightness cases, for what is found in
 * one cuts short the search of all; depth first, so that what is settled grows evenly.
 *
 * @param compiled - the compiled house
 * @param search - places, solver, tally
 */
export async function searchColumns(compiled: CompiledHouse, search: PlacesSearch): Promise<void> {
  const { solver, tally, goesOn } = search;
  const places = await solveCorners(search);
  const decided = decidedFirst(compiled);
  const bounds = new Map<SearchedPlace, number>();
  /** Sets that are open, the next one last. */
  const open = places.map((place): StateSet => ({ place, settled: {}, bounds: [], kept: [] }));
  open.reverse();
  const next = (): Question | undefined => {
    for (let set = open.pop(); set !== undefined; set = open.pop()) {
      const { place, settled } = set;
      const solved = bounds.get(place) ?? 0;
      // What was found since its bound was solved may have settled it.
      if (solved > mostBounds || !mayBeat(set, tally)) {
        tally.settle(statesIn(set));
        continue;
      }
      const split = decided(place.order).find(({ id }) => settled[id] === undefined);
      if (split === undefined) {
        return { kind: 'state', place, state: stateOf(settled, place.doors) };
      }
      const sides =
        undecided(split) > 0 ? [] : sidesOf(set).filter(({ side }) => !set.kept.includes(side));
      if (sides.length === 0) {
        open.push(...partsOf(set, split));
        continue;
      }
      bounds.set(place, solved + sides.length);
      if (solved + sides.length > mostBounds) tally.giveUp();
      return { kind: 'set', place, set, split, sides };
    }
    return undefined;
  };
  const answers = answeredInOrder(next, async (question) => {
    const { at } = question.place;
    return question.kind === 'state'
      ? { pressures: await solver.ask({ kind: 'pressures', at, states: [question.state] }) }
      : {
          bounds: await solver.ask({
            kind: 'bounds',
            at,
            states: question.sides.map(({ state }) => state),
          }),
        };
  });
  for await (const { question, answer } of answers) {
    const { place } = question;
    if (question.kind === 'state') {
      const of = { states: [question.state], lowering: true, raising: true };
      tally.takeStates(place, of, answer.pressures ?? []);
      tally.settle(1);
    } else {
      const pressures = answer.bounds ?? [];
      tally.takeBounds(place, pressures);
      const { set, sides, split } = question;
      const bounded = {
        ...set,
        bounds: [
          ...set.bounds.filter(({ side }) => set.kept.includes(side)),
          ...sides.map(({ side }, index): Bound => ({ side, pressures: pressures[index]! })),
        ],
      };
      if (mayBeat(bounded, tally)) open.push(...partsOf(bounded, split));
      else tally.settle(statesIn(set));
    }
    if (!goesOn()) return;
  }
}

/** Solves the states that carry most and least outward; gives the places, the one with the lowest pressure first. */
async function solveCorners({
  places,
  solver,
  tally,
  goesOn,
}: PlacesSearch): Promise<readonly SearchedPlace[]> {
  const left = [...places];
  const lowestPa = new Map<SearchedPlace, number>();
  const answers = answeredInOrder(
    () => left.shift(),
    (place) =>
      solver.ask({
        kind: 'pressures',
        at: place.at,
        states: bothSides.map((side) => cornerOf(place, side)),
      }),
  );
  for await (const { question: place, answer } of answers) {
    const states = bothSides.map((side) => cornerOf(place, side));
    tally.takeStates(place, { states, lowering: true, raising: true }, answer);
    const lows = answer.flatMap((pressures) => [...(pressures?.lowestPa ?? [])]);
    lowestPa.set(place, Math.min(...lows));
    if (!goesOn()) return [];
  }
  return [...places].sort((one, other) => lowestPa.get(one)! - lowestPa.get(other)!);
}

type Side = 'lowering' | 'raising';
const bothSides: readonly Side[] = ['lowering', 'raising'];

interface Bound {
  readonly side: Side;
  readonly pressures: PressureSpan;
}

/** States of a place that have some switches as they are settled. */
interface StateSet {
  readonly place: SearchedPlace;
  readonly settled: Readonly<Record<string, string>>;
  /** Of the set that it is a part of; none before any was solved. */
  readonly bounds: readonly Bound[];
  /** Sides on which it is bounded at the same state as that set, and so has its bound. */
  readonly kept: readonly Side[];
}

type Question =
  | {
      readonly kind: 'state';
      readonly place: SearchedPlace;
      readonly state: OperatingState;
    }
  | {
      readonly kind: 'set';
      readonly place: SearchedPlace;
      readonly set: StateSet;
      readonly split: OrderedSwitch;
      /** The states at which the set is bounded. */
      readonly sides: readonly { readonly side: Side; readonly state: OperatingState }[];
    };

/** The parts of a set with each setting of a switch, that which carries most outward last. */
function partsOf(set: StateSet, by: OrderedSwitch): readonly StateSet[] {
  return by.settings.map((setting) => {
    const same = bothSides.filter((side) => by[side].length === 1 && by[side][0] === setting);
    return {
      ...set,
      settled: { ...set.settled, [by.id]: setting },
      kept: set.bounds.length === 0 ? [] : same,
    };
  });
}

/** The order in which switches are settled. */
function decidedFirst({
  house,
}: CompiledHouse): (order: readonly OrderedSwitch[]) => readonly OrderedSwitch[] {
  const rated = new Map(
    house.devices.map(({ id, speeds }) => [
      id,
      Math.max(0, ...speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS)),
    ]),
  );
  const strength = ({ id }: OrderedSwitch): number => rated.get(id) ?? 0;
  const known = new Map<readonly OrderedSwitch[], readonly OrderedSwitch[]>();
  return (order) => {
    // What is not ordered is decided first, for no bound covers it; then the strongest, which tells most.
    const sorted =
      known.get(order) ??
      [...order].sort((a, b) => undecided(b) - undecided(a) || strength(b) - strength(a));
    known.set(order, sorted);
    return sorted;
  };
}

/** Settings that the ordering leaves beside one another; 0 where it decides between all. */
function undecided({ settings, lowering, raising }: OrderedSwitch): number {
  const isDecided = settings.length === 1 || (lowering.length === 1 && raising.length === 1);
  return isDecided ? 0 : settings.length;
}

function statesIn({ place, settled }: StateSet): number {
  return place.order.reduce(
    (product, { id, settings }) =>
      settled[id] === undefined ? product * settings.length : product,
    1,
  );
}

function cornerOf({ order, doors }: SearchedPlace, side: Side): OperatingState {
  return stateOf(Object.fromEntries(order.map((each) => [each.id, each[side].at(-1)!])), doors);
}

/** The states that bound a set: what is not settled at its extremes. */
function sidesOf({
  place: { order, doors },
  settled,
}: StateSet): readonly { readonly side: Side; readonly state: OperatingState }[] {
  return bothSides.flatMap((side) =>
    [
      ...combinationsOf(
        order.map((each) => {
          const known = settled[each.id];
          return { id: each.id, settings: known === undefined ? each[side] : [known] };
        }),
      ),
    ].map((settings) => ({ side, state: stateOf(settings, doors) })),
  );
}

/** Whether a state of the set may beat an extreme; none can where the baseline could not be solved. */
function mayBeat({ bounds, place }: StateSet, { kept, baselineOf }: SearchTally): boolean {
  const baseline = baselineOf(place);
  if (baseline === undefined) return false;
  if (bounds.length === 0) return true;
  return bounds.some(({ side, pressures }) => {
    const [sign, reached, from, kinds] =
      side === 'lowering'
        ? ([1, pressures.lowestPa, baseline.highestPa, ['lowest', 'largest fall']] as const)
        : ([-1, pressures.highestPa, baseline.lowestPa, ['highest', 'largest rise']] as const);
    return reached.some((pressure, zone) => {
      const values = [pressure, pressure - from[zone]!];
      return kinds.some((kind, index) => {
        const extreme = kept.extremePa(kind, zone);
        return extreme === undefined || sign * (values[index]! - extreme) < -beatenByPa;
      });
    });
  });
}
