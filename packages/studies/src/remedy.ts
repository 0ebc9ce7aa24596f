import type { Assumption, House, Outlet } from '@evendraft/house';
import type { DuctRun } from './sized/duct-run.js';

/** Kinds of change to a house that have a size. */
export type RemedyKind =
  | 'passive opening'
  | 'make-up duct'
  | 'barometric make-up duct'
  | 'motorized make-up duct'
  | 'powered make-up air'
  | 'speed cap'
  | 'transfer opening'
  | 'airtightness'
  | 'exhaust flow';

/** What a remedy's size is. */
export type SizeDimension = 'area' | 'diameter' | 'volume flow' | 'share of the highest speed';

/** Sizes that a remedy may have, in SI: m², m, m³/s or a share [-]. */
export type OfferedSizes =
  | { readonly kind: 'any'; readonly least: number; readonly most: number }
  | { readonly kind: 'listed'; readonly sizes: readonly number[] };

/** How make-up air is built, beside its size. */
export interface MakeUpBuilt {
  readonly from: Outlet;
  /** Absent where it has no duct. */
  readonly run?: DuctRun;
}

/** A change to a house that has a size. The house with it is a house like any other. */
export interface Remedy {
  readonly kind: RemedyKind;
  /** In words, without the size, e.g. `motorized make-up duct to the kitchen, opens with the hood`. */
  readonly what: string;
  readonly dimension: SizeDimension;
  readonly offered: OfferedSizes;
  /** The wanted size is the smallest that holds, or the largest: a cap on a flow, a flow without make-up. */
  readonly wanted: 'smallest' | 'largest';
  /** Id of what is added to the house or changed in it. */
  readonly item: string;
  /** Where its air comes from and by what duct; absent where it brings no air from outside. */
  readonly built?: MakeUpBuilt;
  /** Suction at which its barometric damper begins to open, where it has one [Pa]. */
  readonly opensAtPa?: number;
  /** What it rests on beside the house. */
  readonly assumptions: readonly Assumption[];
  /**
   * The house with the remedy.
   *
   * @param size - one of the sizes offered
   * @returns a changed copy
   */
  houseWith(size: number): House;
  /**
   * The house whose control stands at the end of its band that brings in most air; absent where there is no band.
   * {@link Remedy.houseWith} has the end that brings in least.
   *
   * @param size - one of the sizes offered
   * @returns a changed copy
   */
  houseAtMost?(size: number): House;
}
