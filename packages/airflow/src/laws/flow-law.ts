import type { InletAir } from './inlet-air.js';

/**
 * Links of one law, prepared for one state of the air: records of equal length, one after the other.
 * The link at place `begin + k` of the state has its record at `k * recordLength`.
 */
export interface LawGroup {
  readonly records: Float64Array;
  readonly recordLength: number;
  /** What the law's `recordClass` said of all its links, or 0. */
  readonly recordClass: number;
  begin: number;
  end: number;
}

/** What a sweep over links reads and writes, one place a link. */
export interface LinkState {
  /** Pressure at the `from` end minus pressure at the `to` end, at the opening [Pa]. */
  readonly pressureDifferencePa: Float64Array;
  /** Mass flow, positive from → to [kg/s]. */
  readonly massFlowKgPerS: Float64Array;
  /** Slope of the mass flow in its own pressure difference, never negative [kg/(s Pa)]. */
  readonly slopeKgPerSPa: Float64Array;
}

/**
 * A group whose links with an end at a boundary come first, zone by zone. Where the law brings a loop of its own,
 * these are turned to leave their zone, with records prepared for their airs the other way round.
 */
export interface ZoneGroup extends LawGroup {
  /** Place after the last turned link of each zone. */
  readonly zoneEnd: Int32Array;
  /** Place of the first link that is not turned. */
  interior: number;
}

/**
 * What a sweep reads and writes that adds to the zones as it goes. By zone there is one place more, which holds no
 * pressure and stands for every boundary, so that one loop serves all links that are not turned.
 */
export interface ZoneTally {
  /** Pressures at which the laws are evaluated, by zone [Pa]. */
  readonly pressurePa: Float64Array;
  /** Sum of the flows that leave each zone, those that enter it negative [kg/s]. */
  readonly residual: Float64Array;
  /** Sum of the sizes of the flows at each zone [kg/s]. */
  readonly through: Float64Array;
  /** Sum of the slopes of the links at each zone [kg/(s Pa)]. */
  readonly slopeSum: Float64Array;
  /** Zones of each link's ends. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Pressure difference at zero pressure in the zones [Pa]. */
  readonly drivePa: Float64Array;
  readonly state: LinkState;
  /** Chord of each law, for the start: slope [kg/(s Pa)] and flow at no pressure difference [kg/s]. */
  readonly chordSlope: Float64Array;
  readonly chordFlow: Float64Array;
}

/** Flows and slopes of a group, added to the sums of its zones. */
export type TallyBlock = (group: ZoneGroup, tally: ZoneTally) => void;

/** Flows and slopes of a group from its pressure differences. */
export type LawBlock = (group: LawGroup, state: LinkState) => void;

/** Where a prepared record is written: the air at both ends and the factor on the flow. */
export interface Preparation {
  /** Air that enters when the flow goes from → to. */
  from: InletAir;
  /** Air that enters when the flow goes to → from. */
  to: InletAir;
  /** Factor on the flow [-]. */
  scale: number;
  records: Float64Array;
  /** Index of the record's first number. */
  at: number;
}

/** Something in a description that is out of range: a code, the field, and what was found and allowed. */
export interface LawProblem {
  readonly code: LawProblemCode;
  readonly severity: 'error' | 'warning';
  /** Field of the description, dotted. */
  readonly field: string;
  readonly found: number | string;
  readonly allowed: string;
}

/** Codes of a law's problems. */
export type LawProblemCode =
  | 'LawParameterOutOfRange'
  | 'UnknownLaw'
  | 'FixedFlowNeedsOneFlow'
  | 'FanCurveTooShort'
  | 'FanPointsShareARise'
  | 'RisingFanCurve'
  | 'DuctWithoutSections'
  | 'DuctWithoutResistance';

/** A flow at which a law is used beyond the range in which it is trusted. */
export interface LawWarning {
  readonly code: LawWarningCode;
  /** Field of the description that it concerns, dotted. */
  readonly field: string;
  readonly found: number;
  /** Greatest value for which the law is trusted. */
  readonly most: number;
  /** Unit of both, `(-)` for none. */
  readonly unit: string;
}

/** Codes of warnings about a law's range. */
export type LawWarningCode = 'VelocityBeyondLaw' | 'RoughnessBeyondLaw' | 'ReynoldsBeyondLaw';

/** One law of the table: how to check, prepare and evaluate links of one kind. */
export interface FlowLaw<Description> {
  readonly kind: string;
  /** The law in one line of plain text. */
  readonly equation: string;
  /** Where the law holds and where its slope is zero or jumps. */
  readonly validity: string;
  /** Problems of a description; none if it can be prepared. */
  check(description: Description): LawProblem[];
  /** Length of its record [-]. */
  recordLength(description: Description): number;
  /**
   * Links with the same block, record length and class are evaluated together; a power law's class is its
   * exponent. Class 0 takes links of every class, so that rare ones need no group of their own.
   */
  recordClass(description: Description): number;
  /** Writes its record; allocates nothing. */
  prepare(description: Description, preparation: Preparation): void;
  readonly block: LawBlock;
  /** The flow is the same at every pressure difference, so that one evaluation serves a whole solve. */
  readonly constant?: true;
  /**
   * The inverse, where the law has one in closed form: pressure differences and slopes from mass flows. It only
   * serves to start a solve and need not be exact.
   */
  readonly inverseBlock?: LawBlock;
  /**
   * The block and the addition to the zones in one, where that was measured to pay; it leaves the flows and
   * slopes of the block in the state, and no pressure differences. A law that has it is the same law the other way
   * round when its airs are exchanged.
   */
  readonly tallyBlock?: TallyBlock;
  /**
   * Likewise the tangents at the flows of the chords, for the start; it leaves these flows in the state, and the
   * pressure differences and slopes that the law has there.
   */
  readonly tallyStartBlock?: TallyBlock;
  /**
   * The streams of a law through which air can flow both ways at once, whose difference is the net flow at scale 1;
   * a law without it has one stream, the net flow.
   */
  streams?(
    description: Description,
    pressureDifferencePa: number,
    air: { readonly from: InletAir; readonly to: InletAir },
  ): LawStreams;
  /** Greatest flows either way as the pressure difference goes to minus and plus infinity [kg/s]. */
  reach(description: Description, from: InletAir, to: InletAir): FlowReach;
  /**
   * Where a flow of one such part lies beyond the law's range of trust; absent for a law without such limits.
   * The air is that which enters.
   */
  limits?(description: Description, massFlowKgPerS: number, air: InletAir): LawWarning[];
}

/** What flows either way through one link, both positive [kg/s]. */
export interface LawStreams {
  /** From → to [kg/s]. */
  readonly forwardKgPerS: number;
  /** To → from [kg/s]. */
  readonly backwardKgPerS: number;
}

/** The flows that a law can carry at some pressure difference [kg/s]. */
export interface FlowReach {
  readonly leastKgPerS: number;
  readonly mostKgPerS: number;
  /** The flow grows strictly with the pressure difference, everywhere. */
  readonly strict: boolean;
}
