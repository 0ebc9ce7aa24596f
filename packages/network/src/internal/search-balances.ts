import { gravity } from '@evendraft/airflow';
import type { Balance, UnsolvedBalance } from '../balance.js';
import type { RootBalance } from '../root-balance.js';
import type { ColumnState } from './column-states.js';
import type {
  AssumedStates,
  BoundedNetwork,
  ColumnDrives,
  PressureBounds,
} from './column-bounds.js';
import {
  boundsWidth,
  closerBounds,
  firstBounds,
  possibleStates,
  turnsAway,
} from './column-bounds.js';
import { fanRoots } from './fan-roots.js';
import type { AssumedColumns } from './settle-columns.js';
import { isSameBalance, settleColumns } from './settle-columns.js';

/** What is searched, and for what. */
export interface BalanceSearch extends BoundedNetwork {
  readonly linkIds: readonly string[];
  readonly asked: AssumedColumns['asked'];
  /** Only stable balances, and of many those with the extremes of the first so many zones. */
  readonly extremesOf?: number;
}

/** What a search came to. */
export interface FoundBalances {
  readonly balances: readonly RootBalance[];
  /** Nothing that was looked for can have been missed. */
  readonly complete: boolean;
  /** Every balance of the kind was found, not only those with the extremes. */
  readonly counted: boolean;
  /** Why some part could not be solved. */
  readonly unsolved?: UnsolvedBalance;
}

/** Stable balances that are gone through before only extremes are looked for. */
const mostCounted = 24;
/** Rounds in which the bounds of one branch are drawn closer. */
const mostRounds = 12;
/** A round that leaves more than this part of the width is the last, unless it decides a column [-]. */
const worthwhile = 0.8;
/** Pressures this close tie [Pa]. */
const tiePa = 1e-5;

interface Branch {
  readonly states: AssumedStates;
  readonly bounds: PressureBounds | undefined;
}

/** Which branches are followed first, and which not at all. */
interface Aim {
  readonly first: 'upward' | 'downward';
  /** No balance within the bounds is wanted. */
  beside(bounds: PressureBounds): boolean;
  /** As many balances as are wanted. */
  enough(): boolean;
}

/**
 * Searches the states of columns by branching on those that bounds leave open.
 *
 * For a set of states bounds on the pressures tell which way the air of most columns can go at all; a column of
 * which only one state is left is held in it, and the bounds come closer. What stays open is tried state by state.
 * Where more than a few balances are stable, what cannot hold an extreme pressure of a zone is left out.
 *
 * @param search - network, columns, and what is looked for
 * @returns balances found, and what was left out
 */
export function searchBalances(search: BalanceSearch): FoundBalances {
  const { columns, extremesOf, budget } = search;
  const balances: RootBalance[] = [];
  const drives = drivesOf(search);
  let complete = true;
  let unsolved: UnsolvedBalance | undefined;

  const leaf = (states: readonly ColumnState[], bounds: PressureBounds | undefined): void => {
    const densities = search.densities.slice();
    const removed = new Set<number>();
    columns.forEach(({ link, upwardDensityKgPerM3, downwardDensityKgPerM3 }, k) => {
      densities[link] = states[k] === 'downward' ? downwardDensityKgPerM3 : upwardDensityKgPerM3;
      if (states[k] === 'still') removed.add(link);
    });
    const assumed = { ...search, states, densities };
    const wanted = (balance: Balance): boolean =>
      settleColumns({ flows: [], balance, stable: true }, assumed) !== undefined;
    const { freed } = search;
    const start = bounds?.lowestPa.map((low, zone) => (low + bounds.highestPa[zone]!) / 2);
    const rest = { columnDensityKgPerM3: densities, removed, wanted, ...(start && { start }) };
    const found = fanRoots(freed, rest, budget);
    // Zones may hang on a column that is assumed at rest; then it cannot be.
    if (found.unsolved === undefined || removed.size === 0) {
      complete &&= found.complete;
      unsolved ??= found.unsolved;
    }
    for (const root of found.roots) {
      const settled = settleColumns(root, assumed);
      if (settled === undefined || (extremesOf !== undefined && !settled.stable)) continue;
      if (balances.some(({ balance }) => isSameBalance(balance, settled.balance))) continue;
      const fans = freed.fans.map(({ id, link }) => ({
        link: id,
        volumeFlowM3PerS: settled.balance.links.volumeFlowM3PerS[link]!,
      }));
      balances.push({ ...settled, fans });
    }
  };

  /** What a column may do; where only stable balances are wanted it is not held at a rest that it leaves. */
  const statesOf = (...of: Parameters<typeof possibleStates>): readonly ColumnState[] =>
    possibleStates(...of).filter(
      (state) => state !== 'still' || extremesOf === undefined || !turnsAway(of[0]),
    );

  /** What bounds leave of a set of states; undefined where some column can stand in no way. */
  const held = (
    states: AssumedStates,
    bounds: PressureBounds | undefined,
  ): AssumedStates | undefined => {
    const next: (ColumnState | undefined)[] = [];
    for (const [k, column] of columns.entries()) {
      const open = statesOf(column, drives[k]!, bounds);
      const state = states[k];
      if (open.length === 0 || (state !== undefined && !open.includes(state))) return undefined;
      next.push(state ?? (open.length === 1 ? open[0] : undefined));
    }
    return next;
  };
  const openIn = (states: AssumedStates): number =>
    states.filter((state) => state === undefined).length;

  /** The columns held that can stand in one way only, as long as that draws the bounds closer. */
  const narrowed = ({ states, bounds: known }: Branch): Branch | undefined => {
    let bounds = known ?? firstBounds(search, states);
    let now = held(states, bounds);
    for (let round = 0; round < mostRounds; round++) {
      // One column is tried as soon as its bounds are drawn closer.
      if (now === undefined || bounds === undefined || openIn(now) <= 1) break;
      const closer = closerBounds(search, now, bounds);
      const next = held(now, closer);
      const settled = next !== undefined && openIn(next) === openIn(now);
      const slow = boundsWidth(closer) > worthwhile * boundsWidth(bounds);
      [now, bounds] = [next, closer];
      if (settled && slow) break;
    }
    return now && { states: now, bounds };
  };

  /** False where it was broken off. */
  const follow = (start: Branch, { first, beside, enough }: Aim): boolean => {
    const open = [start];
    for (let taken = open.pop(); taken !== undefined; taken = open.pop()) {
      if (enough()) return false;
      if (budget.left <= 0) {
        complete = false;
        return true;
      }
      const branch = narrowed(taken);
      if (branch === undefined) continue;
      const { states, bounds } = branch;
      if (bounds !== undefined && beside(bounds)) continue;
      const next = strongest(search, states);
      if (next === undefined) {
        leaf(states as readonly ColumnState[], bounds);
        continue;
      }
      const left = statesOf(columns[next]!, drives[next]!, bounds);
      // What comes last on the pile is followed first.
      const order = [...left].sort((a, b) => Number(a === first) - Number(b === first));
      for (const state of order) {
        open.push({ states: states.map((each, k) => (k === next ? state : each)), bounds });
      }
    }
    return true;
  };

  const root: Branch = { states: columns.map(() => undefined), bounds: undefined };
  const counted = follow(root, {
    first: 'upward',
    beside: () => false,
    enough: () => extremesOf !== undefined && balances.length >= mostCounted,
  });
  if (!counted) {
    for (const side of ['lowest', 'highest'] as const) {
      follow(root, {
        first: side === 'lowest' ? 'upward' : 'downward',
        beside: (bounds) => beatsNone({ balances, bounds, side, zones: extremesOf ?? 0 }),
        enough: () => false,
      });
    }
  }
  return { balances, complete, counted: counted && complete, ...(unsolved && { unsolved }) };
}

/** The drives of each column. */
function drivesOf({ freed, columns, densities }: BalanceSearch): readonly ColumnDrives[] {
  const drives = freed.drivesPa(densities);
  return columns.map(({ link, riseM, upwardDensityKgPerM3, downwardDensityKgPerM3 }) => {
    const at = (density: number): number =>
      drives[link]! - gravity * (density - densities[link]!) * riseM;
    return { upward: at(upwardDensityKgPerM3), downward: at(downwardDensityKgPerM3) };
  });
}

/** The open column whose airs are furthest apart: what it does tells most. */
function strongest({ columns }: BalanceSearch, states: AssumedStates): number | undefined {
  let best: number | undefined;
  let apart = -1;
  columns.forEach(({ upwardDensityKgPerM3, downwardDensityKgPerM3, riseM }, k) => {
    const now = Math.abs((upwardDensityKgPerM3 - downwardDensityKgPerM3) * riseM);
    if (states[k] === undefined && now > apart) [best, apart] = [k, now];
  });
  return best;
}

function beatsNone({
  balances,
  bounds: { lowestPa, highestPa },
  side,
  zones,
}: {
  readonly balances: readonly RootBalance[];
  readonly bounds: PressureBounds;
  readonly side: 'lowest' | 'highest';
  readonly zones: number;
}): boolean {
  for (let zone = 0; zone < zones; zone++) {
    const known = balances.map(({ balance }) => balance.pressuresPa[zone]!);
    if (side === 'lowest' && lowestPa[zone]! < Math.min(...known) - tiePa) return false;
    if (side === 'highest' && highestPa[zone]! > Math.max(...known) + tiePa) return false;
  }
  return true;
}
