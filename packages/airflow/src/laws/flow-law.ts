import type { InletAir } from './inlet-air.js';

/**
 * Links of one law, prepared for one state of the air: records of equal length, one after the other.
 * The link at place `begin + k` of the state has its record at `k * recordLength`.
 */
export interface LawGroup {
  readonly records: Float64Array;
  readonly recordLength: number;
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
   * The compiled loop that a solver may run in place of the block, with the same result to the bit, and of the inverse,
   * roughly. A law has one where that was measured to pay.
   */
  readonly compiled?: 'powerLaw';
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
