import type { Balance, UnsolvedBalance } from '../balance.js';
import type { FreedFan, FreedNetwork, FreedSetting } from './freed-network.js';

/** A balance of the whole: every free fan's rise is what the rest asks of it. */
export interface FanRoot {
  /** Actual volume flow of each fan [m3/s]. */
  readonly flows: readonly number[];
  readonly balance: Balance;
  readonly stable: boolean;
}

/** Every root that was found. */
export interface FanRoots {
  readonly roots: readonly FanRoot[];
  /** No part of the fans' ranges was left in which a root could still hide. */
  readonly complete: boolean;
  /** Why some part could not be solved. */
  readonly unsolved?: UnsolvedBalance;
}

/** Solves that may still be made; shared by all searches of one task. */
export interface SolveBudget {
  left: number;
}

/** What the fans stand in. */
export interface FanRest extends Pick<FreedSetting, 'columnDensityKgPerM3' | 'removed'> {
  /** Pressures near which the balance may lie, where that is known [Pa]. */
  readonly start?: Float64Array;
  /** Whether a balance is wanted at all; one that is not is never enclosed. */
  wanted(balance: Balance): boolean;
}

/** A part of the fans' ranges: an interval of flow each; `shut` where the fan's damper holds it at zero. */
interface Box {
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly shut: readonly boolean[];
}

interface Point {
  readonly flows: readonly number[];
  readonly balance: Balance;
  /** Rise that each fan gives less the rise that the rest asks of it [Pa]. */
  readonly gaps: readonly number[];
}

/** Part of a fan's range from which a change of sign, or with several fans an iteration, tells the root. */
const fineOfOne = 2 ** -12;
const fineOfSeveral = 2 ** -10;
/** Part of the range at which a box that neither signs nor an iteration settle is given up. */
const finest = 2 ** -20;

/**
 * Finds every set of flows at which all fans balance the rest, by halving boxes of flows.
 *
 * In a box the pressures are highest when every fan gives its most and takes its least, and lowest the other
 * way round, because pressures never fall when air is added. Two solves so bound the rise asked of each fan; a
 * box in which that leaves out the fan's own curve holds no root.
 */
export function fanRoots(freed: FreedNetwork, rest: FanRest, budget: SolveBudget): FanRoots {
  const { fans } = freed;
  if (fans.length === 0) return withoutFans(freed, rest, budget);
  const removed = fans.map(({ link }) => rest.removed.has(link));
  let unsolved: UnsolvedBalance | undefined;
  let complete = true;
  const solve = (taken: readonly number[], given: readonly number[]): Balance | undefined => {
    budget.left--;
    const result = freed.solve({ ...rest, taken, given, enclosure: false });
    if (result.status === 'solved') return result;
    unsolved = result;
    complete = false;
    return undefined;
  };
  const pointAt = (flows: readonly number[]): Point | undefined => {
    const balance = solve(flows, flows);
    return (
      balance && {
        flows,
        balance,
        gaps: fans.map((fan, k) => fan.curve.riseAt(flows[k]!) - asked(balance, fan)),
      }
    );
  };

  const found: { point: Point; shut: readonly boolean[] }[] = [];
  const keep = (point: Point, shut: readonly boolean[]): void => {
    // A fan held shut asks for no balance of its own, only that the rest press it back.
    if (shut.some((isShut, k) => isShut && !removed[k] && point.gaps[k]! > 0)) return;
    const known = found.some(({ point: other }) =>
      other.flows.every((flow, k) => Math.abs(flow - point.flows[k]!) <= 1e-9 * range(fans[k]!)),
    );
    if (!known) found.push({ point, shut });
  };
  const boxes = firstBoxes(fans, removed);
  while (boxes.length > 0) {
    if (budget.left <= 0) {
      complete = false;
      break;
    }
    const box = boxes.pop()!;
    const free = fans.map((_, k) => k).filter((k) => !box.shut[k]!);
    if (free.length === 0) {
      const point = pointAt(box.low);
      if (point !== undefined) keep(point, box.shut);
      continue;
    }
    if (excluded({ fans, removed }, box, solve)) continue;
    const falls = (k: number): boolean =>
      fans[k]!.curve.riseAt(box.high[k]!) <= fans[k]!.curve.riseAt(box.low[k]!);
    const widths = fans.map((fan, k) => (box.high[k]! - box.low[k]!) / range(fan));
    const widest = free.reduce((best, k) => (widths[k]! > widths[best]! ? k : best), free[0]!);
    const alone = free.length === 1;
    const fine = alone ? fineOfOne : fineOfSeveral;
    if (widths[widest]! > fine && !(alone && falls(widest))) {
      boxes.push(...halves(box, widest));
      continue;
    }
    const root = alone ? bisect(box, widest, pointAt) : polish(fans, { box, free }, pointAt);
    if (root === 'none') continue;
    if (root !== undefined) keep(root, box.shut);
    else if (widths[widest]! > finest) boxes.push(...halves(box, widest));
    else complete = false;
  }

  const wanted = found.filter(({ point }) => rest.wanted(point.balance));
  const roots = wanted.map(({ point, shut }) => {
    const { flows } = point;
    const result = freed.solve({ ...rest, taken: flows, given: flows, enclosure: true });
    const stable = isStable(fans, { flows, shut }, pointAt);
    return { flows, stable, balance: result.status === 'solved' ? result : point.balance };
  });
  return { roots, complete, ...(unsolved && { unsolved }) };
}

/** The one balance of a network in which no fan is free. */
function withoutFans(freed: FreedNetwork, rest: FanRest, budget: SolveBudget): FanRoots {
  const setting = { ...rest, taken: [], given: [] };
  budget.left--;
  const balance = freed.solve({ ...setting, enclosure: true });
  if (balance.status !== 'solved') return { roots: [], complete: false, unsolved: balance };
  const roots = rest.wanted(balance) ? [{ flows: [], stable: true, balance }] : [];
  return { roots, complete: true };
}

/** Pressure that the rest asks the fan to overcome [Pa]. */
function asked(balance: Balance, fan: FreedFan): number {
  return -balance.links.pressureDifferencePa[fan.link]!;
}

function range({ curve: { breaks } }: FreedFan): number {
  return breaks[breaks.length - 1]! - breaks[0]!;
}

/** Every combination of the pieces of the fans' curves. */
function firstBoxes(fans: readonly FreedFan[], removed: readonly boolean[]): Box[] {
  let boxes: Box[] = [{ low: [], high: [], shut: [] }];
  for (const [k, { curve, blocked }] of fans.entries()) {
    // A damper that blocks reverse flow ends the curve at zero flow, where it may be held shut.
    const from = blocked ? Math.max(0, curve.breaks[0]!) : curve.breaks[0]!;
    const ends = [from, ...curve.breaks.filter((flow) => flow > from)];
    const pieces = ends.slice(1).map((high, end) => ({ low: ends[end]!, high, shut: false }));
    if (removed[k]) pieces.length = 0;
    if (removed[k] || blocked) pieces.push({ low: 0, high: 0, shut: true });
    boxes = boxes.flatMap((box) =>
      pieces.map(({ low, high, shut }) => ({
        low: [...box.low, low],
        high: [...box.high, high],
        shut: [...box.shut, shut],
      })),
    );
  }
  return boxes;
}

function halves({ low, high, shut }: Box, fan: number): Box[] {
  const middle = (low[fan]! + high[fan]!) / 2;
  const replaced = (values: readonly number[]): number[] =>
    values.map((value, k) => (k === fan ? middle : value));
  return [
    { low: replaced(low), high, shut },
    { low, high: replaced(high), shut },
  ];
}

type SolveFlows = (taken: readonly number[], given: readonly number[]) => Balance | undefined;

/** No root lies in the box, because what is asked of some fan leaves out what it gives. */
function excluded(
  { fans, removed }: { readonly fans: readonly FreedFan[]; readonly removed: readonly boolean[] },
  { low, high, shut }: Box,
  solve: SolveFlows,
): boolean {
  const highest = solve(low, high);
  const lowest = solve(high, low);
  if (highest === undefined || lowest === undefined) return true;
  return fans.some((fan, k) => {
    const { link, into, curve } = fan;
    const spread = into < 0 ? 0 : highest.pressuresPa[into]! - lowest.pressuresPa[into]!;
    const least = -highest.links.pressureDifferencePa[link]! - spread;
    const most = -lowest.links.pressureDifferencePa[link]! + spread;
    const margin = 1e-9 * Math.max(1, Math.abs(least), Math.abs(most));
    const ends = [curve.riseAt(low[k]!), curve.riseAt(high[k]!)];
    if (shut[k]) return !removed[k] && most < ends[0]! - margin;
    return Math.max(...ends) < least - margin || Math.min(...ends) > most + margin;
  });
}

type PointAt = (flows: readonly number[]) => Point | undefined;

/** The zero of one fan's gap in a box; `none` where a falling gap does not change its sign. */
function bisect(box: Box, fan: number, pointAt: PointAt): Point | 'none' | undefined {
  let left = pointAt(box.low);
  let right = pointAt(box.high);
  if (left === undefined || right === undefined) return undefined;
  const sign = Math.sign(left.gaps[fan]!);
  const falls = left.gaps[fan]! > right.gaps[fan]!;
  if (sign === 0) return left;
  if (right.gaps[fan] === 0) return right;
  if (Math.sign(right.gaps[fan]!) === sign) return falls ? 'none' : undefined;
  for (let halving = 0; halving < 60; halving++) {
    const flow = (left.flows[fan]! + right.flows[fan]!) / 2;
    if (flow === left.flows[fan] || flow === right.flows[fan]) break;
    const middle = pointAt(left.flows.map((value, k) => (k === fan ? flow : value)));
    if (middle === undefined) break;
    if (Math.sign(middle.gaps[fan]!) === sign) left = middle;
    else right = middle;
  }
  return left;
}

/** The common zero of several gaps near a small box, by Newton with differences; undefined where it strays. */
function polish(
  fans: readonly FreedFan[],
  { box, free }: { readonly box: Box; readonly free: readonly number[] },
  pointAt: PointAt,
): Point | undefined {
  let point = pointAt(box.low.map((low, k) => (low + box.high[k]!) / 2));
  for (let step = 0; step < 40 && point !== undefined; step++) {
    const flows: readonly number[] = point.flows;
    const size = Math.max(...free.map((k) => Math.abs(point!.gaps[k]!)));
    if (size <= 1e-9) return point;
    const columns = free.map((k) => difference(fans, { flows, fan: k }, pointAt));
    const change = solveSmall(
      free.map((_, row) => columns.map((column) => column?.[free[row]!] ?? NaN)),
      free.map((k) => -point!.gaps[k]!),
    );
    const next = [...flows];
    free.forEach((k, row) => (next[k] = flows[k]! + change[row]!));
    const near = free.every((k) => {
      const reach = box.high[k]! - box.low[k]!;
      return next[k]! >= box.low[k]! - reach && next[k]! <= box.high[k]! + reach;
    });
    if (!near) return undefined;
    point = pointAt(next);
  }
  return undefined;
}

/** Change of all gaps with one fan's flow, over a small step either way [Pa s/m3]. */
function difference(
  fans: readonly FreedFan[],
  { flows, fan }: { readonly flows: readonly number[]; readonly fan: number },
  pointAt: PointAt,
): number[] | undefined {
  const step = 1e-6 * range(fans[fan]!);
  const moved = (by: number): Point | undefined =>
    pointAt(flows.map((flow, k) => (k === fan ? flow + by : flow)));
  const above = moved(step);
  const below = moved(-step);
  if (above === undefined || below === undefined) return undefined;
  return above.gaps.map((gap, k) => (gap - below.gaps[k]!) / (2 * step));
}

/** Gauss elimination with row exchange; what is singular gives numbers that are not finite. */
function solveSmall(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, k) => [...row, right[k]!]);
  const size = rows.length;
  for (let pivot = 0; pivot < size; pivot++) {
    const best = rows
      .slice(pivot)
      .reduce((a, b) => (Math.abs(b[pivot]!) > Math.abs(a[pivot]!) ? b : a));
    rows.splice(rows.indexOf(best), 1);
    rows.splice(pivot, 0, best);
    for (const row of rows) {
      if (row === best) continue;
      const factor = row[pivot]! / best[pivot]!;
      for (let column = pivot; column <= size; column++) row[column]! -= factor * best[column]!;
    }
  }
  return rows.map((row, k) => row[size]! / row[k]!);
}

/**
 * A small disturbance of the fans' flows dies out: the matrix of gap changes is negative definite. It is
 * symmetric but for densities; the geometric mean of mirrored entries makes it so without moving its signs.
 */
function isStable(
  fans: readonly FreedFan[],
  { flows, shut }: { readonly flows: readonly number[]; readonly shut: readonly boolean[] },
  pointAt: PointAt,
): boolean {
  const free = fans.map((_, k) => k).filter((k) => !shut[k]!);
  const columns = free.map((fan) => difference(fans, { flows, fan }, pointAt));
  const entry = (row: number, column: number): number => -(columns[column]?.[free[row]!] ?? NaN);
  const rows = free.map((_, i) =>
    free.map((_, j) =>
      i === j
        ? entry(i, i)
        : Math.sign(entry(i, j)) * Math.sqrt(Math.abs(entry(i, j) * entry(j, i))),
    ),
  );
  for (let pivot = 0; pivot < rows.length; pivot++) {
    const top = rows[pivot]!;
    if (!(top[pivot]! > 0)) return false;
    for (const row of rows.slice(pivot + 1)) {
      const factor = row[pivot]! / top[pivot]!;
      for (let column = pivot; column < rows.length; column++) {
        row[column]! -= factor * top[column]!;
      }
    }
  }
  return true;
}
