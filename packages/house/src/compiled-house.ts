import type { BuiltNetwork, NetworkDescription, Scenario } from '@evendraft/network';
import type { FollowedState } from './compile/followed-state.js';
import type { HouseLink, Junction, TwoStateColumn } from './compile/house-link.js';
import type { RemainingLeakage } from './compile/remaining-leakage.js';
import type { House } from './house.js';

/** A house as a network, built once; states, weathers and airtightness cases are overrides on it. */
export interface CompiledHouse {
  readonly house: House;
  readonly network: BuiltNetwork;
  /** Links in the network's order, each with the part of the house it stands for. */
  readonly links: readonly HouseLink[];
  /** Zones of the network behind those of the house: places between parts in series. */
  readonly junctions: readonly Junction[];
  /** Links whose column fills with whichever air enters: shafts, vertical ducts, flues. */
  readonly twoStateLinks: readonly TwoStateLink[];
  /** Present where fans stall and every flow of theirs is wanted. */
  readonly stalls?: StallingFans;
  /** Leakage that is left for the leak shares, one row an airtightness case. */
  readonly leakage: readonly RemainingLeakage[];
}

/** Fans whose curves rise somewhere, in a network in which they do. */
export interface StallingFans {
  /** Places among the links. */
  readonly links: readonly number[];
  /** The network with the curves themselves; in the built one their envelopes stand for them. */
  readonly description: NetworkDescription;
}

/** A link whose column has the air of one of its ends, as its flow goes. */
export interface TwoStateLink extends TwoStateColumn {
  /** Place among the links. */
  readonly index: number;
  readonly id: string;
}

/** A weather as a house meets it: the air of every node and column, and the pressure of every boundary. */
export interface HouseWeather extends Required<
  Pick<
    Scenario,
    'outdoorAir' | 'zoneAir' | 'boundaryAir' | 'boundaryPressuresPa' | 'columnDensityKgPerM3'
  >
> {
  /** Name of the weather. */
  readonly name: string;
}

/** A state in a weather at an airtightness case of one house. */
export interface HouseScenario {
  /** What runs and which dampers are open once interlocks have followed. */
  readonly followed: FollowedState;
  /** The overrides on the network. */
  readonly scenario: Scenario;
}
