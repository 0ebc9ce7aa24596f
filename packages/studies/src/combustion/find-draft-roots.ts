import { fromUsualFlows, polished, slopesAt } from './internal/draft-newton.js';
import type { DraftPoint, DraftSearch } from './internal/draft-search.js';
import { product, type Interval } from './internal/interval.js';
import { ventBounds } from './internal/vent-bounds.js';
import { largestFlows } from './internal/largest-flows.js';
import type { VentSystem } from './vent-system.js';
import { ventsAtFlows, type VentsAtFlows } from './vents-at-flows.js';

/** Vents, and what the rest of the house does when they take air from it. */
export interface DraftQuestion {
  readonly systems: readonly VentSystem[];
  /**
   * By member, system after system: pressure of its room at the collar's height minus that where its flue ends, both
   * minus outdoors at their heights, when the flows are taken; never rises with any flow; `undefined` where the rest
   * has no balance [kg/s → Pa].
   */
  readonly response: (flows: readonly number[]) => readonly number[] | undefined;
  /** Greatest number of responses to ask for; 4,000 when absent, 1,000 with three flues or more. */
  readonly mostResponses?: number;
}

/** One state in which flows, temperatures and pressures of all vents agree. */
export interface DraftRoot {
  /** By member, upwards positive [kg/s]. */
  readonly flows: readonly number[];
  /** By system. */
  readonly systems: readonly VentsAtFlows[];
  /** By member, what the rest of the house gives there [Pa]. */
  readonly responsePa: readonly number[];
  /** A small disturbance of flow and temperature dies out. */
  readonly stable: boolean;
  /** Greatest difference between what a flue asks and the house gives [Pa]. */
  readonly gapPa: number;
}

/** Every such state. */
export interface DraftRoots {
  /** In rising order of the flow of the first member. */
  readonly roots: readonly DraftRoot[];
  /** No part of the flows was left in which a state could hide; two closer than 1/16,000 of the range may count as one. */
  readonly complete: boolean;
}

/** Part of the range at which a box is searched for its root, with one member and with several. */
const fine = { one: 2 ** -14, several: 2 ** -9 };
/** Part of the range at which a box that shows no root is given up. */
const finest = { one: 2 ** -30, several: 2 ** -20 };
const slices = 8;

/**
 * Every consistent state of the flues of a house: warm and rising, cold and falling, and the unstable ones between.
 *
 * Flow and temperature of a flue depend on each other, so that what it asks of its room is no monotone function of its
 * flow; what the rest of the house gives is. Boxes of flows are narrowed by bounds on both, which leave out no state,
 * until each holds one, found by change of sign or, with several flues, by Newton's method.
 *
 * The work grows steeply with the number of flues: with three that can flow both ways the search is mostly cut short.
 * Then the states are those that an iteration finds from usual flows, and `complete` is false.
 *
 * @param question - vents, and the response of the rest
 * @returns all states with their stability, and whether any could have been missed
 *
 * Source: derived; interval bounds on mass and heat balances.
 */
export function findDraftRoots(question: DraftQuestion): DraftRoots {
  const search = searchOf(question);
  const { free, reach } = search;
  const still = search.members.map(({ injectedKgPerS }) => injectedKgPerS);
  const limits = free.length === 1 ? 'one' : 'several';
  let complete = true;
  const found: DraftPoint[] = [];
  const keep = (point: DraftPoint): void => {
    const known = found.some(({ flows }) =>
      free.every((k) => Math.abs(flows[k]! - point.flows[k]!) <= 1e-9 * reach[k]!),
    );
    if (!known) found.push(point);
  };
  if (free.length === 0) {
    const only = search.at(still);
    return { roots: only === undefined ? [] : [asRoot(search, only)], complete: true };
  }
  const most = question.mostResponses ?? (free.length > 2 ? 1000 : 4000);
  const boxes = [...firstBoxes(search, still)];
  while (boxes.length > 0) {
    const box = boxes.pop()!;
    const runs = search.narrowed(box);
    if (runs === 'no balance' || search.asked() > most) {
      complete = false;
      break;
    }
    for (const narrow of product(runs)) {
      const widths = free.map((k) => (narrow[k]!.high - narrow[k]!.low) / (2 * reach[k]!));
      const widest = Math.max(...widths);
      if (widest > fine[limits]) {
        boxes.push(...splitIfSlow(narrow, { before: box, free, reach }));
        continue;
      }
      const point = free.length === 1 ? crossing(search, narrow) : polished(search, narrow);
      if (point === 'no balance') complete = false;
      else if (point !== undefined) keep(point);
      else if (widest > finest[limits])
        boxes.push(...splitIfSlow(narrow, { before: box, free, reach }));
      else complete = false;
    }
  }
  // A search that was cut short still tells the states that an iteration finds from usual flows.
  if (!complete) for (const point of fromUsualFlows(search, still)) keep(point);
  const roots = found.map((point) => asRoot(search, point));
  roots.sort((a, b) => a.flows[free[0]!]! - b.flows[free[0]!]!);
  return { roots, complete };
}

function searchOf(question: DraftQuestion): DraftSearch {
  const { systems } = question;
  const members = systems.flatMap((system) => system.members);
  const free = members.flatMap(({ inlets }, k) => (inlets.length > 0 ? [k] : []));
  const starts = systems.map((_, s) =>
    systems.slice(0, s).reduce((sum, system) => sum + system.members.length, 0),
  );
  const part = <Item>(all: readonly Item[], s: number): readonly Item[] =>
    all.slice(starts[s], starts[s]! + systems[s]!.members.length);
  const known = new Map<string, readonly number[] | undefined>();
  let asked = 0;
  const response = (flows: readonly number[]): readonly number[] | undefined => {
    const key = flows.join();
    if (!known.has(key)) {
      asked++;
      known.set(key, question.response(flows));
    }
    return known.get(key);
  };
  const still = members.map(({ injectedKgPerS }, k) => (free.includes(k) ? 0 : injectedKgPerS));
  const reach = largestFlows(systems, response(still) ?? still.map(() => 0));

  return {
    members,
    free,
    reach,
    asked: () => asked,
    at(flows) {
      const responsePa = response(flows);
      if (responsePa === undefined) return undefined;
      const states = systems.map((system, s) => ventsAtFlows(system, part(flows, s)));
      const gaps = states
        .flatMap((state) => state.members)
        .map(({ neededPa }, k) => (free.includes(k) ? responsePa[k]! - neededPa : 0));
      return { flows, systems: states, responsePa, gaps };
    },
    narrowed(box) {
      const most = response(box.map(({ low }) => low));
      const least = response(box.map(({ high }) => high));
      if (most === undefined || least === undefined) return 'no balance';
      return systems.flatMap((system, s) => {
        const own = part(box, s);
        return own.map((interval, k) => {
          const index = starts[s]! + k;
          if (!free.includes(index)) return [interval];
          const given = { low: least[index]!, high: most[index]! };
          return runsOf(interval, (slice) => {
            const bounds = ventBounds(
              system,
              own.map((other, j) => (j === k ? slice : other)),
            )[k]!;
            const margin = 1e-9 * Math.max(1, Math.abs(bounds.low), Math.abs(bounds.high));
            return bounds.low <= given.high + margin && bounds.high >= given.low - margin;
          });
        });
      });
    },
  };
}

/** Runs of slices of an interval that may hold a state. */
function runsOf(interval: Interval, may: (slice: Interval) => boolean): readonly Interval[] {
  const { low, high } = interval;
  if (low === high) return [interval];
  const runs: { low: number; high: number }[] = [];
  for (let slice = 0; slice < slices; slice++) {
    const from = low + ((high - low) * slice) / slices;
    const to = slice === slices - 1 ? high : low + ((high - low) * (slice + 1)) / slices;
    if (!may({ low: from, high: to })) continue;
    const last = runs.at(-1);
    if (last !== undefined && last.high === from) last.high = to;
    else runs.push({ low: from, high: to });
  }
  return runs;
}

/** Upward and downward flow apart, and gas diluted and undiluted, where what is asked has a kink. */
function firstBoxes(
  { members, free, reach }: DraftSearch,
  still: readonly number[],
): readonly (readonly Interval[])[] {
  return product(
    members.map(({ gasFlowKgPerS }, k) => {
      if (!free.includes(k)) return [{ low: still[k]!, high: still[k]! }];
      const ends = [-reach[k]!, 0, gasFlowKgPerS, reach[k]!].filter(
        (end, place, all) => place === 0 || end > all[place - 1]!,
      );
      return ends.slice(1).map((high, end) => ({ low: ends[end]!, high }));
    }),
  );
}

/** The box, halved at its widest side where narrowing did little. */
function splitIfSlow(
  box: readonly Interval[],
  of: {
    readonly before: readonly Interval[];
    readonly free: readonly number[];
    readonly reach: readonly number[];
  },
): (readonly Interval[])[] {
  const { before, free, reach } = of;
  const width = ({ low, high }: Interval): number => high - low;
  const narrowed = free.some((k) => width(box[k]!) < 0.6 * width(before[k]!));
  if (narrowed) return [box];
  const widest = free.reduce((a, b) =>
    width(box[b]!) / reach[b]! > width(box[a]!) / reach[a]! ? b : a,
  );
  const { low, high } = box[widest]!;
  const middle = (low + high) / 2;
  if (middle <= low || middle >= high) return [];
  const replaced = (by: Interval): readonly Interval[] =>
    box.map((interval, k) => (k === widest ? by : interval));
  return [replaced({ low, high: middle }), replaced({ low: middle, high })];
}

/** The change of sign of the only gap in a box, to rounding; undefined where there is none. */
function crossing(
  search: DraftSearch,
  box: readonly Interval[],
): DraftPoint | 'no balance' | undefined {
  const k = search.free[0]!;
  const at = (flow: number): DraftPoint | undefined =>
    search.at(box.map((interval, j) => (j === k ? flow : interval.low)));
  let left = at(box[k]!.low);
  let right = at(box[k]!.high);
  if (left === undefined || right === undefined) return 'no balance';
  const gap = (point: DraftPoint): number => point.gaps[k]!;
  if (gap(left) === 0) return left;
  if (gap(right) === 0) return right;
  if (gap(left) > 0 === gap(right) > 0) return undefined;
  // Regula falsi that halves the weight of an end that stays, with a plain halving every third step.
  let weights = { left: 1, right: 1 };
  let best = Math.abs(gap(left)) < Math.abs(gap(right)) ? left : right;
  for (let step = 1; step <= 120; step++) {
    const a: number = left.flows[k]!;
    const b: number = right.flows[k]!;
    const fa: number = gap(left) * weights.left;
    const fb: number = gap(right) * weights.right;
    const flow: number = step % 3 === 0 ? (a + b) / 2 : a + ((b - a) * fa) / (fa - fb);
    if (!(flow > a && flow < b)) break;
    const middle = at(flow);
    if (middle === undefined) return 'no balance';
    if (Math.abs(gap(middle)) < Math.abs(gap(best))) best = middle;
    if (Math.abs(gap(best)) <= closure(best, k)) break;
    if (gap(middle) > 0 === gap(left) > 0) {
      left = middle;
      weights = { left: 1, right: weights.right / 2 };
    } else {
      right = middle;
      weights = { left: weights.left / 2, right: 1 };
    }
  }
  return best;
}

/** Gap at which a state counts as found: far below the 1e-9 that is promised. */
function closure({ responsePa }: DraftPoint, k: number): number {
  return 1e-12 * Math.max(1, Math.abs(responsePa[k]!));
}

function asRoot(search: DraftSearch, point: DraftPoint): DraftRoot {
  const { flows, systems, responsePa, gaps } = point;
  return {
    flows,
    systems,
    responsePa,
    stable: isStable(search, point),
    gapPa: Math.max(0, ...gaps.map(Math.abs)),
  };
}

/**
 * A small disturbance dies out where more flow always leaves less drive than it takes: minus the slopes is positive
 * definite. Air moves at once and walls follow, so that the slopes with walls at rest decide.
 */
function isStable(search: DraftSearch, point: DraftPoint): boolean {
  const slopes = slopesAt(search, point);
  if (slopes === undefined) return false;
  const rows = slopes.map((row, i) =>
    row.map((slope, j) => {
      const mirrored = slopes[j]![i]!;
      if (i === j) return -slope;
      return slope * mirrored > 0
        ? -Math.sign(slope) * Math.sqrt(slope * mirrored)
        : -(slope + mirrored) / 2;
    }),
  );
  for (let pivot = 0; pivot < rows.length; pivot++) {
    const top = rows[pivot]!;
    if (!(top[pivot]! > 0)) return false;
    for (const row of rows.slice(pivot + 1)) {
      const factor = row[pivot]! / top[pivot]!;
      for (let column = pivot; column < rows.length; column++)
        row[column]! -= factor * top[column]!;
    }
  }
  return true;
}
