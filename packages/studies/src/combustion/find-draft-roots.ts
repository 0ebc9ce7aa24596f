import { fromUsualFlows, polished, slopesAt } from './internal/draft-newton.js';
import type { DraftPoint, DraftSearch } from './internal/draft-search.js';
import { dividedBox, kinksOf, narrowedBox, type DraftBox } from './internal/draft-box.js';
import { product, widthOf, type Interval } from './internal/interval.js';
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
  /**
   * By member, a number of the room that it stands in: responses of one number differ by the same at all flows, as where
   * flues of one room end outdoors. Each member by itself when absent.
   */
  readonly rooms?: readonly number[];
  /** Greatest number of responses to ask for; 20,000 when absent. */
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
/** Responses that a search may ask for unless it is told. */
const usualResponses = 20_000;

/**
 * Every consistent state of the flues of a house: warm and rising, cold and falling, and the unstable ones between.
 *
 * Flow and temperature of a flue depend on each other, so that what it asks of its room is no monotone function of its
 * flow; what the rest of the house gives is. Boxes of flows and of the pressures of rooms are narrowed by bounds on
 * both, which leave out no state, until each holds one, found by change of sign or, with several flues, by Newton's
 * method.
 *
 * The number of states itself can double with each flue that could go either way, and the work with it. A search that
 * is cut short tells the states that an iteration finds from usual flows, and `complete` is false.
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
  const { mostResponses = usualResponses } = question;
  const boxes = [...firstBoxes(search, still)];
  while (boxes.length > 0) {
    const narrowed = narrowedBox(search, boxes.pop()!);
    if (narrowed === 'empty') continue;
    if (narrowed === 'no balance' || search.asked() > mostResponses) {
      complete = false;
      break;
    }
    const widths = free.map((k) => widthOf(narrowed.flows[k]!) / (2 * reach[k]!));
    const widest = Math.max(...widths);
    if (widest > fine[limits]) {
      boxes.push(...dividedBox(search, narrowed));
      continue;
    }
    const { flows } = narrowed;
    const point = free.length === 1 ? crossing(search, flows) : polished(search, flows);
    if (point === 'no balance') complete = false;
    else if (point !== undefined) keep(point);
    else if (widest > finest[limits]) boxes.push(...dividedBox(search, narrowed));
    else complete = false;
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
  const systemOf = systems.flatMap((system, s) => system.members.map(() => s));
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
    rooms: question.rooms ?? members.map((_, k) => k),
    asked: () => asked,
    response,
    at(flows) {
      const responsePa = response(flows);
      if (responsePa === undefined) return undefined;
      const states = systems.map((system, s) => ventsAtFlows(system, part(flows, s)));
      const gaps = states
        .flatMap((state) => state.members)
        .map(({ neededPa }, k) => (free.includes(k) ? responsePa[k]! - neededPa : 0));
      return { flows, systems: states, responsePa, gaps };
    },
    placeOf(k, all) {
      const s = systemOf[k]!;
      return { system: systems[s]!, own: part(all, s), place: k - starts[s]! };
    },
  };
}

/**
 * The whole range; where several share a chimney, upward and downward flow apart and gas diluted and undiluted, because
 * bounds on one need the direction of the others.
 */
function firstBoxes(search: DraftSearch, still: readonly number[]): readonly DraftBox[] {
  const { members, free, reach } = search;
  const given = members.map(() => ({ low: -Infinity, high: Infinity }));
  const ranges = members.map((_, k): readonly Interval[] => {
    if (!free.includes(k)) return [{ low: still[k]!, high: still[k]! }];
    const alone = search.placeOf(k, members).own.length === 1;
    if (alone && free.length > 1) return [{ low: -reach[k]!, high: reach[k]! }];
    const ends = [-reach[k]!, ...kinksOf(search, k), reach[k]!].filter(
      (end, place, all) => place === 0 || end > all[place - 1]!,
    );
    return ends.slice(1).map((high, end) => ({ low: ends[end]!, high }));
  });
  return product(ranges).map((flows) => ({ flows, given }));
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
