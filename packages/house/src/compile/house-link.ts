import type { VentilatorMode } from '../house.js';
import type { LinkDescription } from '@evendraft/network';

/** When a link of the network is part of a state. */
export type LinkRole =
  /** A piece of the leak share at this place of the house's list. */
  | { readonly kind: 'leak'; readonly share: number }
  | { readonly kind: 'opening'; readonly id: string }
  | { readonly kind: 'door'; readonly id: string; readonly position: 'open' | 'shut' | 'always' }
  | { readonly kind: 'device'; readonly id: string; readonly speed: string }
  | { readonly kind: 'device off'; readonly id: string }
  | { readonly kind: 'make-up'; readonly id: string; readonly damper: 'open' | 'closed' }
  | { readonly kind: 'ventilator'; readonly id: string; readonly mode: VentilatorMode['name'] }
  | { readonly kind: 'air handler'; readonly id: string; readonly stand: 'running' | 'standing' }
  /** A part of a flue: in the stages named, `off` among them; in all when absent. */
  | {
      readonly kind: 'flue';
      readonly id: string;
      readonly part: string;
      readonly stages?: readonly string[];
    }
  /** Something in series with the above: a duct at all times, a damper as it stands. */
  | {
      readonly kind: 'part';
      readonly id: string;
      readonly part: string;
      readonly when: 'always' | 'open' | 'closed';
    };

/** A link of the compiled network with the part of the house it stands for. */
export interface HouseLink {
  readonly description: LinkDescription;
  readonly role: LinkRole;
  /** Id of the zone or boundary whose air fills its column, where it gains or loses height. */
  readonly columnOf?: string;
  /** Present where its column fills with whichever air enters. */
  readonly twoState?: TwoStateColumn;
}

/** What fills the column of a shaft, a vertical duct or a flue. */
export interface TwoStateColumn {
  /** Id of the zone or boundary whose air fills it while air rises in it. */
  readonly upward: string;
  /** Id of the zone or boundary whose air fills it while air falls in it. */
  readonly downward: string;
}

/** A place between two parts in series: a zone of the network without volume. It is no zone of the house. */
export interface Junction {
  /** `@junction <item> <n>`; a user's name cannot begin with `@`. */
  readonly id: string;
  readonly origin: string;
  /** Name of the item that it belongs to. */
  readonly item: string;
  /** Above the house's datum [m]. */
  readonly heightM: number;
  /** Id of the zone or boundary whose air it holds: the one upstream in normal operation. */
  readonly airOf: string;
}

/** Links of the house and the junctions that they need. */
export interface HousePaths {
  readonly links: readonly HouseLink[];
  readonly junctions: readonly Junction[];
}
