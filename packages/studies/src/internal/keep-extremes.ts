import type { Zone } from '@evendraft/house';
import type { BalanceQuestion } from '../balance-study.js';
import type { OrderedSwitch } from './setting-order.js';
import { depthOf, inTies } from './ties.js';

/** What is greatest or least in a situation. */
export type ExtremeKind = 'lowest' | 'largest fall' | 'highest' | 'largest rise';

/** A solved situation of a search. */
export interface SearchedSituation {
  readonly question: BalanceQuestion;
  readonly order: readonly OrderedSwitch[];
  /** Of the house's zones [Pa]. */
  readonly pressuresPa: Float64Array;
  /** The same in the baseline of its weather, doors and airtightness [Pa]. */
  readonly baselinePa: Float64Array;
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
 * Of situations that tie in one zone the deepest in any zone comes first, then the order of study.
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
    if (before !== undefined && rank > before.rank) return;
    if (before !== undefined && rank === before.rank && deep >= before.deep) return;
    best.set(key, { rank, deep, extreme });
  };
  const trim = (): void => {
    deepest = deepest.sort((a, b) => a.deep - b.deep).slice(0, keptDeepest);
  };
  return {
    add(situation, { lowering, raising }) {
      const { pressuresPa, baselinePa } = situation;
      const deep = inTies(depth(pressuresPa));
      for (const zone of zones.keys()) {
        const pressure = inTies(pressuresPa[zone]!);
        const change = inTies(pressuresPa[zone]! - baselinePa[zone]!);
        if (lowering) {
          offer({ ...situation, kind: 'lowest', zone }, pressure, deep);
          offer({ ...situation, kind: 'largest fall', zone }, change, deep);
        }
        if (raising) {
          offer({ ...situation, kind: 'highest', zone }, -pressure, deep);
          offer({ ...situation, kind: 'largest rise', zone }, -change, deep);
        }
      }
      if (!lowering) return;
      deepest.push({ deep, extreme: { ...situation, kind: 'deep', zone: 0 } });
      if (deepest.length >= 4 * keptDeepest) trim();
    },
    extremePa(kind, zone) {
      const extreme = best.get(`${kind} ${zone}`)?.extreme;
      if (extreme === undefined) return undefined;
      const change = kind === 'largest fall' || kind === 'largest rise';
      return extreme.pressuresPa[zone]! - (change ? extreme.baselinePa[zone]! : 0);
    },
    all() {
      trim();
      return [...best.values(), ...deepest].map(({ extreme }) => extreme);
    },
  };
}
