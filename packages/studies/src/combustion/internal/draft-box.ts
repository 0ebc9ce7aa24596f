import type { DraftSearch } from './draft-search.js';
import { hull, meet, widthOf, type Interval } from './interval.js';
import { memberBounds } from './vent-bounds.js';

/** Flows, and what the house gives, between which states may lie; by member. */
export interface DraftBox {
  readonly flows: readonly Interval[];
  readonly given: readonly Interval[];
}

/** A box from which was taken what holds no state. */
export interface NarrowedBox extends DraftBox {
  /** By member, the parts of its flows that may hold a state. */
  readonly runs: readonly (readonly Interval[])[];
}

const slices = 8;
/** Rounds of narrowing before a box is divided. */
const mostRounds = 4;
/** Width of what the house gives below which dividing it narrows no flow any more [Pa]. */
const leastGivenPa = 0.01;
/** Part of the range below which a flow is divided where what is asked has a kink. */
const nearKink = 2 ** -6;

/**
 * Takes from a box what cannot hold a state.
 *
 * What the house gives never rises with a flow, so that the corners of the flows bound it; a slice of a flow whose
 * bounds on what the flue asks lie beside what the house gives is left out. Both by turns, while it narrows.
 *
 * @param search - what can be asked
 * @param box - flows and what the house gives
 * @returns what is left; `empty` where nothing is
 */
export function narrowedBox(
  search: DraftSearch,
  box: DraftBox,
): NarrowedBox | 'empty' | 'no balance' {
  const { free } = search;
  let { flows, given } = box;
  for (let round = 1; ; round++) {
    const most = search.response(flows.map(({ low }) => low));
    const least = search.response(flows.map(({ high }) => high));
    if (most === undefined || least === undefined) return 'no balance';
    given = given.map((own, k) => meet(own, rounded({ low: least[k]!, high: most[k]! })));
    if (free.some((k) => given[k]!.low > given[k]!.high)) return 'empty';
    const runs = flows.map((interval, k) =>
      free.includes(k) ? runsOf(search, { flows, k, given: given[k]! }) : [interval],
    );
    if (runs.some(({ length }) => length === 0)) return 'empty';
    const before = flows;
    flows = runs.map(hull);
    const narrows = free.some((k) => widthOf(flows[k]!) < 0.7 * widthOf(before[k]!));
    if (!narrows || round >= mostRounds) return { flows, given, runs };
  }
}

/**
 * Divides a narrowed box: between runs that lie apart, at a kink, or at the middle of what is widest.
 *
 * Flues of one room have one pressure there, so that dividing it narrows the flows of all.
 *
 * @param search - what can be asked
 * @param box - the box
 * @returns parts that together hold all of it
 */
export function dividedBox(search: DraftSearch, box: NarrowedBox): readonly DraftBox[] {
  const { free, reach, rooms } = search;
  const { flows, given, runs } = box;
  const withFlow = (k: number, parts: readonly Interval[]): readonly DraftBox[] =>
    parts.map((part) => ({
      flows: flows.map((interval, j) => (j === k ? part : interval)),
      given,
    }));
  const apart = greatest(free, (k) =>
    runs[k]!.slice(1).reduce(
      (gap, { low }, run) => Math.max(gap, (low - runs[k]![run]!.high) / reach[k]!),
      0,
    ),
  );
  if (runs[apart]!.length > 1) return withFlow(apart, runs[apart]!);
  const widest = greatest(free, (k) => widthOf(flows[k]!) / reach[k]!);
  const kink = kinksOf(search, widest).find(
    (flow) => flow > flows[widest]!.low && flow < flows[widest]!.high,
  );
  if (kink !== undefined && widthOf(flows[widest]!) < nearKink * reach[widest]!) {
    return withFlow(widest, cut(flows[widest]!, kink));
  }
  const together = free.filter((k) => rooms[k] === rooms[widest]);
  const alone = search.placeOf(widest, flows).own.length === 1;
  const pressure = given[widest]!;
  if (alone && together.length > 1 && widthOf(pressure) > leastGivenPa) {
    const share = (pressure.low + pressure.high) / 2 - pressure.low;
    return [0, 1].map((side) => ({
      flows,
      given: given.map((own, k) => {
        if (!together.includes(k)) return own;
        // Of one room, so that all stand as far above their lowest.
        const middle = own.low + share;
        return side === 0
          ? { low: own.low, high: Math.min(own.high, middle) }
          : { low: Math.min(own.high, middle), high: own.high };
      }),
    }));
  }
  const { low, high } = flows[widest]!;
  const middle = (low + high) / 2;
  return middle > low && middle < high ? withFlow(widest, cut(flows[widest]!, middle)) : [];
}

/** Flows at which what a member asks has a kink: none, and the gas that is not diluted [kg/s]. */
export function kinksOf({ members }: Pick<DraftSearch, 'members'>, k: number): readonly number[] {
  const { gasFlowKgPerS } = members[k]!;
  return gasFlowKgPerS > 0 ? [0, gasFlowKgPerS] : [0];
}

/** Runs of slices of a member's flow that may hold a state. */
function runsOf(
  search: DraftSearch,
  of: { readonly flows: readonly Interval[]; readonly k: number; readonly given: Interval },
): readonly Interval[] {
  const { flows, k, given } = of;
  const { low, high } = flows[k]!;
  if (low === high) return [flows[k]!];
  const { system, own, place } = search.placeOf(k, flows);
  const asks = memberBounds(system, { flows: own, place });
  const ends = [
    ...Array.from({ length: slices }, (_, slice) => low + ((high - low) * slice) / slices),
    high,
    ...kinksOf(search, k).filter((kink) => kink > low && kink < high),
  ].sort((a, b) => a - b);
  const runs: { low: number; high: number }[] = [];
  for (let slice = 1; slice < ends.length; slice++) {
    const [from, to] = [ends[slice - 1]!, ends[slice]!];
    if (!(to > from)) continue;
    const { low: least, high: most } = rounded(asks({ low: from, high: to }));
    if (least > given.high || most < given.low) continue;
    const last = runs.at(-1);
    if (last !== undefined && last.high === from) last.high = to;
    else runs.push({ low: from, high: to });
  }
  return runs;
}

/** Wider by what rounding may hide at either end; an end without limit, where nothing is open, stays where it is. */
function rounded({ low, high }: Interval): Interval {
  const sizes = [low, high].filter(Number.isFinite).map(Math.abs);
  const margin = 1e-9 * Math.max(1, ...sizes);
  return { low: low - margin, high: high + margin };
}

function cut({ low, high }: Interval, at: number): readonly [Interval, Interval] {
  return [
    { low, high: at },
    { low: at, high },
  ];
}

function greatest(all: readonly number[], of: (k: number) => number): number {
  return all.reduce((best, k) => (of(k) > of(best) ? k : best));
}
