import type { AirState, FlowLawDescription } from '@evendraft/airflow';

/**
 * Zones with unknown pressure, boundaries with known pressure, and the links between them, in SI.
 *
 * A pressure is quoted at its node's own height, minus undisturbed outdoors at that height: negative is
 * depressurized.
 */
export interface NetworkDescription {
  /** Air of the outdoor column to which every pressure refers. */
  readonly outdoorAir: AirState;
  readonly zones: readonly ZoneDescription[];
  readonly boundaries: readonly BoundaryDescription[];
  readonly links: readonly LinkDescription[];
}

/** A room, floor or buffer space whose pressure is to be found. */
export interface ZoneDescription {
  readonly id: string;
  /** Path of the item in the file or object it came from. */
  readonly origin: string;
  /** Height of its floor, where its pressure is quoted [m]. */
  readonly heightM: number;
  readonly air: AirState;
}

/** A place whose pressure is known: a face of the house in the wind, an attic, a neighbour. */
export interface BoundaryDescription {
  readonly id: string;
  readonly origin: string;
  /** Height at which its pressure is quoted [m]. */
  readonly heightM: number;
  /** Pressure minus undisturbed outdoors at the same height [Pa]. */
  readonly pressurePa: number;
  readonly air: AirState;
}

/** An opening, duct, damper or fan; its flow is positive from → to. */
export interface LinkDescription {
  readonly id: string;
  readonly origin: string;
  /** Id of a zone or boundary. */
  readonly from: string;
  /** Id of a zone or boundary. */
  readonly to: string;
  /** Height of its opening in `from` [m]. */
  readonly fromHeightM: number;
  /** Height of its opening in `to` [m]. */
  readonly toHeightM: number;
  /** Air between the two heights; required when they differ. */
  readonly columnAir?: AirState;
  readonly law: FlowLawDescription;
}
