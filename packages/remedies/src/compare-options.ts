import type { Diffuser } from '@evendraft/house';
import type { PressureTarget, Remedy, WhenStopped, YearOfWeather } from '@evendraft/studies';
import type { RankRule } from './rank-rule.js';

/** How remedies are compared. */
export interface CompareOptions {
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
  readonly signal?: AbortSignal;
  /** What a stop gives: nothing, or the remedies that are sized by then; nothing when absent. */
  readonly whenStopped?: WhenStopped;
  readonly onProgress?: (done: number, of: number) => void;
}
