import type { VentSystem } from '../vent-system.js';
import type { VentsAtFlows } from '../vents-at-flows.js';
import type { Interval } from './interval.js';

/** Flows of all vents, and how far they are from a state. */
export interface DraftPoint {
  readonly flows: readonly number[];
  readonly systems: readonly VentsAtFlows[];
  readonly responsePa: readonly number[];
  /** What the house gives less what the flue asks: positive drives upwards [Pa]. */
  readonly gaps: readonly number[];
}

/** What a search for states can ask. */
export interface DraftSearch {
  readonly members: readonly VentSystem['members'][number][];
  /** Members whose flow is to be found; a burner without a way for room air holds its own. */
  readonly free: readonly number[];
  readonly reach: readonly number[];
  readonly asked: () => number;
  readonly at: (flows: readonly number[]) => DraftPoint | undefined;
  /** By member, the runs of its interval that can hold a state. */
  readonly narrowed: (box: readonly Interval[]) => readonly (readonly Interval[])[] | 'no balance';
}
