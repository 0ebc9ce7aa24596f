/** What a solve came to: a balance, or the reason why there is none. */
export type SolveResult = Balance | UnsolvedBalance;

/** The pressure of every zone and the flow of every link, with the proof. */
export interface Balance {
  readonly status: 'solved';
  /** Minus undisturbed outdoors at the zone's own height, in the order of the description [Pa]. */
  readonly pressuresPa: Float64Array;
  readonly links: LinkFlows;
  readonly proof: BalanceProof;
}

/** Flows of all links, in the order of the description. */
export interface LinkFlows {
  /** Net, positive from → to [kg/s]. */
  readonly massFlowKgPerS: Float64Array;
  /** From → to [kg/s]. */
  readonly forwardKgPerS: Float64Array;
  /** To → from [kg/s]. */
  readonly backwardKgPerS: Float64Array;
  /** At the opening, `from` minus `to`; also of links that are switched off [Pa]. */
  readonly pressureDifferencePa: Float64Array;
  /** Net, at the density of the air that enters, positive from → to [m3/s]. */
  readonly volumeFlowM3PerS: Float64Array;
}

/** Why a balance can be believed. */
export interface BalanceProof {
  /** Newton steps, the start not counted. */
  readonly iterations: number;
  /** How often every law was evaluated, enclosure included. */
  readonly lawSweeps: number;
  /**
   * Greatest residual of a zone over the flow through it [-]. Where next to nothing flows, that flow counts as a
   * millionth of the greatest, and at least as much as makes rounding no more than the tolerance.
   */
  readonly largestRelativeResidual: number;
  /** The same by zone [-]. */
  readonly residualsRelative: Float64Array;
  /** Id of the zone with the greatest relative residual. */
  readonly worstZone: string | undefined;
  /** Id of the link with the greatest flow into or out of that zone. */
  readonly worstLink: string | undefined;
  /** Every solution of the laws as coded lies within this of the pressures given; undefined where not asked or not shown [Pa]. */
  readonly enclosureRadiusPa: number | undefined;
  readonly enclosed: boolean;
  /** No zone's pressure can move without moving a flow. */
  readonly unique: boolean;
  /** Bound on what the smooth part of the laws near zero adds to a pressure; 0 where no link is that close to zero [Pa]. */
  readonly regularisationPa: number;
}

/** A solve without an answer. It has no pressures, so that none can be read by mistake. */
export interface UnsolvedBalance {
  readonly status: UnsolvedStatus;
  /** Ids of the zones concerned. */
  readonly zones: readonly string[];
  readonly worstZone: string | undefined;
  /** Where the iteration stood, in the order of the description [Pa]. */
  readonly lastIteratePa?: Float64Array;
  readonly iterations: number;
  /** What to add or change. */
  readonly hint: string;
}

/**
 * - `invalid-scenario`: a scenario's array has the wrong length, or a number in it is out of range.
 * - `infeasible`: no pressures balance the flows; a zone has only fixed flows, or a flap faces the wrong way.
 * - `not-unique`: some zones' pressures may take any value within a range.
 * - `not-converged`: the iteration ended before the balance was exact enough.
 */
export type UnsolvedStatus = 'invalid-scenario' | 'infeasible' | 'not-unique' | 'not-converged';
