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
 * that are solved as they are. Likewise above. The set whose bound beats an extreme by most comes first, of all
 * weathers, doors and airtightness cases, so that an extreme of one cuts short the search of all.
 *
 * @param compiled - the compiled house
 * @param search - places, solver, tally
 */
export async function searchColumns(
  compiled: CompiledHouse,
  { places, solver, tally, goesOn }: PlacesSearch,
): Promise<void> {
  const decided = decidedFirst(compiled);
  const open = openSets();
  const bounds = new Map<SearchedPlace, number>();
  // The states that carry most and least outward come first: they tell most of the rest.
  const corners = places.flatMap((place) =>
    (['lowering', 'raising'] as const).map((side): Question => ({
      kind: 'state',
      place,
      state: cornerOf(place, side),
      settles: 0,
    })),
  );
  for (const place of places) {
    open.add({ place, settled: {}, bounds: [], kept: [], excessPa: Infinity });
  }
  const next = (): Question | undefined => {
    const corner = corners.shift();
    if (corner !== undefined) return corner;
    for (let set = open.take(); set !== undefined; set = open.take()) {
      const { place, settled } = set;
      const states = statesIn(set);
      const solved = bounds.get(place) ?? 0;
      // What was found since its bound was solved may have settled it.
      const isSettled = set.bounds.length > 0 && !(excessOf(set.bounds, place, tally) > beatenByPa);
      if (isSettled || solved > mostBounds) {
        tally.settle(states);
        continue;
      }
      const split = decided(place.order).find(({ id }) => settled[id] === undefined);
      if (split === undefined) {
        return { kind: 'state', place, state: stateOf(settled, place.doors), settles: 1 };
      }
      if (undecided(split) > 0) {
        open.split(set, split);
        continue;
      }
      const sides = sidesOf(set).filter(({ side }) => !set.kept.includes(side));
      if (sides.length === 0) {
        open.split(set, split);
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
      tally.settle(question.settles);
    } else {
      const pressures = answer.bounds ?? [];
      tally.takeBounds(place, pressures);
      const found = [
        ...question.set.bounds.filter(({ side }) => question.set.kept.includes(side)),
        ...question.sides.map(({ side }, index): Bound => ({ side, pressures: pressures[index]! })),
      ];
      const excessPa = excessOf(found, place, tally);
      if (excessPa > beatenByPa) {
        open.split({ ...question.set, bounds: found, excessPa }, question.split);
      } else {
        tally.settle(statesIn(question.set));
      }
    }
    if (!goesOn()) return;
  }
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
  /** By how much they beat an extreme when they were solved [Pa]. */
  readonly excessPa: number;
}

type Question =
  | {
      readonly kind: 'state';
      readonly place: SearchedPlace;
      readonly state: OperatingState;
      /** Situations that are settled with it. */
      readonly settles: number;
    }
  | {
      readonly kind: 'set';
      readonly place: SearchedPlace;
      readonly set: StateSet;
      readonly split: OrderedSwitch;
      /** The states at which the set is bounded. */
      readonly sides: readonly { readonly side: Side; readonly state: OperatingState }[];
    };

/** Sets of states that are open, that which beats an extreme by most on top; of equal ones the last that came. */
function openSets(): {
  readonly add: (set: StateSet) => void;
  readonly split: (set: StateSet, by: OrderedSwitch) => void;
  readonly take: () => StateSet | undefined;
} {
  const sets: StateSet[] = [];
  const add = (set: StateSet): void => {
    let [low, high] = [0, sets.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sets[middle]!.excessPa <= set.excessPa) low = middle + 1;
      else high = middle;
    }
    sets.splice(low, 0, set);
  };
  return {
    add,
    split(set, by) {
      for (const setting of by.settings) {
        const same = bothSides.filter((side) => by[side].length === 1 && by[side][0] === setting);
        add({
          ...set,
          settled: { ...set.settled, [by.id]: setting },
          kept: set.bounds.length === 0 ? [] : same,
        });
      }
    },
    take: () => sets.pop(),
  };
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

/** By how much bounds beat the extremes so far [Pa]; nothing is beaten where the baseline could not be solved. */
function excessOf(bounds: readonly Bound[], place: SearchedPlace, tally: SearchTally): number {
  const baseline = tally.baselineOf(place);
  if (baseline === undefined) return 0;
  let excessPa = -Infinity;
  for (const { side, pressures } of bounds) {
    const [sign, reached, from, kinds] =
      side === 'lowering'
        ? ([1, pressures.lowestPa, baseline.highestPa, ['lowest', 'largest fall']] as const)
        : ([-1, pressures.highestPa, baseline.lowestPa, ['highest', 'largest rise']] as const);
    reached.forEach((pressure, zone) => {
      const values = [pressure, pressure - from[zone]!];
      kinds.forEach((kind, index) => {
        const extreme = tally.kept.extremePa(kind, zone);
        const beyond = extreme === undefined ? Infinity : sign * (extreme - values[index]!);
        excessPa = Math.max(excessPa, beyond);
      });
    });
  }
  return excessPa;
}
