import type { Diffuser } from '@evendraft/house';
import type { PooledOptions, PressureTarget, Remedy, YearOfWeather } from '@evendraft/studies';
import type { RankRule } from './rank-rule.js';

/** How remedies are compared; work that is stopped and kept has the remedies that were sized by then. */
export interface CompareOptions extends PooledOptions {
  /** The remedies, of this house. */
  readonly remedies: readonly Remedy[];
  /** Pressures to keep in place of the limits of the set. */
  readonly targets?: readonly PressureTarget[];
  /** How far inside each limit a size must stay; 0 when absent [Pa]. */
  readonly reservePa?: number;
  /** A pressure above outdoors that no room inside may exceed, beside the targets; none when absent [Pa]. */
  readonly highestPa?: number;
  /** Where make-up air comes out in the room; the free area of the remedy itself, at the hood, when absent. */
  readonly outlet?: { readonly areaM2: number; readonly diffuser?: Diffuser };
  /** Order of the rows; `usualRankRule` when absent. */
  readonly rank?: RankRule;
  /** A year of weather with the hours a day in which the largest exhaust runs; no yearly energy when absent. */
  readonly year?: { readonly weather: YearOfWeather; readonly hoursPerDay: number };
  /** Of the fan of powered make-up air; 100 Pa at an efficiency of 0.3 when absent, our choice. */
  readonly supplyFan?: { readonly pressureRisePa: number; readonly efficiency: number };
  /** Told how many remedies are done of all, one under way as the part of it that is done. */
  readonly onProgress?: (done: number, of: number) => void;
}
