import type { Zone } from '@evendraft/house';
import type { BalanceQuestion } from '../balance-study.js';
import type { PressureSpan } from '../resolve-columns.js';
import type { SearchedPlace } from './search-places.js';
import { depthOf, inTies } from './ties.js';

/** What is greatest or least in a situation. */
export type ExtremeKind = 'lowest' | 'largest fall' | 'highest' | 'largest rise';

/** A solved situation of a search. */
export interface SearchedSituation {
  readonly question: BalanceQuestion;
  readonly place: SearchedPlace;
  readonly pressures: PressureSpan;
  /** The same in the baseline of its weather, doors and airtightness. */
  readonly baseline: PressureSpan;
}

/** A situation that is the extreme of a zone, or only one of the deepest of the house. */
export interface FoundExtreme extends SearchedSituation {
  readonly kind: ExtremeKind | 'deep';
  /** Index of the zone whose extreme it is; that of any where it is only deep. */
  readonly zone: number;
}

/** Collects the extremes of situations as they come. */
export interface ExtremeKeeper {
  /** Offers a situation for the extremes that its settings may hold. */
  add(
    situation: SearchedSituation,
    side: { readonly lowering: boolean; readonly raising: boolean },
  ): void;
  all(): readonly FoundExtreme[];
  /** The extreme so far, undefined before the first [Pa]. */
  extremePa(kind: ExtremeKind, zone: number): number | undefined;
}

/** Most of the deepest situations that are kept beside the extremes. */
const keptDeepest = 200;

/**
 * Keeps, for each zone and kind of extreme, the first situation of those that tie, and the deepest of all.
 *
 * Of situations that tie in one zone the deepest in any zone comes first, then the place that is first in the order of
 * study, then what was offered first.
 *
 * @param zones - the house's zones
 * @returns the keeper
 */
export function keepExtremes(zones: readonly Zone[]): ExtremeKeeper {
  const depth = depthOf(zones);
  const best = new Map<
    string,
    { readonly rank: number; readonly deep: number; extreme: FoundExtreme }
  >();
  let deepest: { readonly deep: number; readonly extreme: FoundExtreme }[] = [];
  const offer = (extreme: FoundExtreme, rank: number, deep: number): void => {
    const key = `${extreme.kind} ${extreme.zone}`;
    const before = best.get(key);
    if (before !== undefined) {
      const later =
        rank - before.rank ||
        deep - before.deep ||
        extreme.place.index - before.extreme.place.index;
      if (later >= 0) return;
    }
    best.set(key, { rank, deep, extreme });
  };
  const trim = (): void => {
    deepest = deepest
      .sort((a, b) => a.deep - b.deep || a.extreme.place.index - b.extreme.place.index)
      .slice(0, keptDeepest);
  };
  return {
    add(situation, { lowering, raising }) {
      const deep = inTies(depth(situation.pressures.lowestPa));
      for (const zone of zones.keys()) {
        const kinds = [
          ...(lowering ? (['lowest', 'largest fall'] as const) : []),
          ...(raising ? (['highest', 'largest rise'] as const) : []),
        ];
        for (const kind of kinds) {
          const value = inTies(valueOf(situation, kind, zone));
          const falls = kind === 'lowest' || kind === 'largest fall';
          offer({ ...situation, kind, zone }, falls ? value : -value, deep);
        }
      }
      if (!lowering) return;
      deepest.push({ deep, extreme: { ...situation, kind: 'deep', zone: 0 } });
      if (deepest.length >= 4 * keptDeepest) trim();
    },
    extremePa(kind, zone) {
      const extreme = best.get(`${kind} ${zone}`)?.extreme;
      return extreme && valueOf(extreme, kind, zone);
    },
    all() {
      trim();
      return [...best.values(), ...deepest].map(({ extreme }) => extreme);
    },
  };
}

/** Pressure or change of a zone in a situation, over its balances that which goes furthest [Pa]. */
function valueOf(situation: SearchedSituation, kind: ExtremeKind, zone: number): number {
  const { pressurePa, baselinePa } = extremeIn(situation, kind, zone);
  return kind === 'lowest' || kind === 'highest' ? pressurePa : pressurePa - baselinePa;
}

/**
 * What a zone has in a situation at an extreme. Where several balances are stable the situation takes the one
 * furthest out, and its baseline the one from which that is furthest.
 *
 * @param situation - the situation
 * @param kind - which extreme
 * @param zone - index of the zone
 * @returns pressure and baseline [Pa]
 */
export function extremeIn(
  { pressures, baseline }: SearchedSituation,
  kind: ExtremeKind,
  zone: number,
): { readonly pressurePa: number; readonly baselinePa: number } {
  return kind === 'lowest' || kind === 'largest fall'
    ? { pressurePa: pressures.lowestPa[zone]!, baselinePa: baseline.highestPa[zone]! }
    : { pressurePa: pressures.highestPa[zone]!, baselinePa: baseline.lowestPa[zone]! };
}
