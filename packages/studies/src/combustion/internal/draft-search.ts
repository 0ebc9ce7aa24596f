import type { VentSystem } from '../vent-system.js';
import type { VentsAtFlows } from '../vents-at-flows.js';

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
  /** By member, the number of its room; responses of one number differ by the same at all flows. */
  readonly rooms: readonly number[];
  readonly asked: () => number;
  readonly response: (flows: readonly number[]) => readonly number[] | undefined;
  readonly at: (flows: readonly number[]) => DraftPoint | undefined;
  /** The system of a member, its part of a list by member, and the member's place in it. */
  readonly placeOf: <Item>(
    k: number,
    all: readonly Item[],
  ) => { readonly system: VentSystem; readonly own: readonly Item[]; readonly place: number };
}
