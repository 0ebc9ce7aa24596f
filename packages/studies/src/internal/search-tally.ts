import type { OperatingState, Zone } from '@evendraft/house';
import type { BalanceQuestion } from '../balance-study.js';
import type { PressureSpan } from '../resolve-columns.js';
import type { ShownRange } from './carries-at-least.js';
import { keepExtremes, type ExtremeKeeper } from './keep-extremes.js';
import type { SearchedPlace } from './search-places.js';

/** States that were solved together, and the extremes that they may hold. */
export interface SearchedStates {
  readonly states: readonly OperatingState[];
  readonly lowering: boolean;
  readonly raising: boolean;
}

/** What a search has come to. */
export interface SearchTally {
  readonly kept: ExtremeKeeper;
  readonly unsolved: readonly BalanceQuestion[];
  readonly solves: number;
  /** Situations that are solved or covered. */
  readonly settled: number;
  /** Pressures of rooms that were met. */
  readonly met: ShownRange;
  /** False where a pressure left the range in which the laws were compared, or a part was given up. */
  readonly premiseHolds: boolean;
  /** Takes the pressures of the baseline of a place. */
  readonly takeBaseline: (place: SearchedPlace, baseline: PressureSpan | undefined) => void;
  readonly baselineOf: (place: SearchedPlace) => PressureSpan | undefined;
  /** Takes the pressures of states of a place, one row a state. */
  readonly takeStates: (
    place: SearchedPlace,
    of: SearchedStates,
    rows: readonly (PressureSpan | undefined)[],
  ) => void;
  /** Takes bounds on pressures. */
  readonly takeBounds: (place: SearchedPlace, bounds: readonly PressureSpan[]) => void;
  readonly settle: (situations: number) => void;
  readonly giveUp: () => void;
}

/**
 * The books of a search: extremes, what was not solved, what was met, how far it is.
 *
 * @param zones - the house's zones
 * @returns the tally, of nothing yet
 */
export function searchTally(zones: readonly Zone[]): SearchTally {
  const kept = keepExtremes(zones);
  const unsolved: BalanceQuestion[] = [];
  const baselines = new Map<SearchedPlace, PressureSpan | undefined>();
  let solves = 0;
  let settled = 0;
  let met: ShownRange = { fromPa: 0, toPa: 0 };
  let premiseHolds = true;
  const meet = ({ lowestPa, highestPa }: PressureSpan, shown: ShownRange): void => {
    const fromPa = Math.min(...lowestPa);
    const toPa = Math.max(...highestPa);
    premiseHolds &&= shown.fromPa <= fromPa && toPa <= shown.toPa;
    met = { fromPa: Math.min(met.fromPa, fromPa), toPa: Math.max(met.toPa, toPa) };
  };
  return {
    kept,
    unsolved,
    get solves() {
      return solves;
    },
    get settled() {
      return settled;
    },
    get met() {
      return met;
    },
    get premiseHolds() {
      return premiseHolds;
    },
    takeBaseline(place, baseline) {
      solves += 1;
      baselines.set(place, baseline);
    },
    baselineOf: (place) => baselines.get(place),
    takeStates(place, of, rows) {
      solves += rows.length;
      const baseline = baselines.get(place);
      of.states.forEach((state, row) => {
        const question = place.question(state);
        const pressures = rows[row];
        if (pressures === undefined || baseline === undefined) {
          unsolved.push(question);
          return;
        }
        meet(pressures, place.shown);
        kept.add({ question, place, pressures, baseline }, of);
      });
    },
    takeBounds(place, bounds) {
      solves += bounds.length;
      for (const each of bounds) meet(each, place.shown);
    },
    settle(situations) {
      settled += situations;
    },
    giveUp() {
      premiseHolds = false;
    },
  };
}
