import type { LawWarningCode } from '@evendraft/airflow';
import type { OperatingState } from '@evendraft/house';

/** Pressure of one zone in one state. */
export interface ZonePressure {
  readonly zone: string;
  /**
   * At the zone's floor, minus undisturbed outdoors at the same height; where several balances are stable, the
   * zone's lowest [Pa].
   */
  readonly pressurePa: number;
  /**
   * Minus the same in the baseline of the same weather, doors and airtightness; where several of its balances are
   * stable, minus the zone's highest [Pa].
   */
  readonly changeFromBaselinePa: number;
}

/** What one running device delivers against the house's suction. */
export interface DeliveredFlow {
  readonly device: string;
  readonly speed: string;
  readonly ratedFlowM3PerS: number;
  /** Actual volume at the inlet, positive in the device's own direction [m³/s]. */
  readonly deliveredFlowM3PerS: number;
  /** True where the device started because its driver runs. */
  readonly interlocked: boolean;
}

/** A make-up opening's part in one state. */
export interface MakeUpFlow {
  readonly opening: string;
  readonly damper: 'open' | 'closed';
  /** Into the house, actual volume at its inlet [m³/s]. */
  readonly flowM3PerS: number;
  /** Flow over the area through which it enters the room, where that is given [m/s]. */
  readonly faceVelocityMPerS?: number;
}

/** A part of the house through which air flows beyond the range in which its law is trusted. */
export interface LawRangeWarning {
  /** Name of the device or opening. */
  readonly item: string;
  /** Which of its parts, e.g. `duct`; absent where it has but one. */
  readonly part?: string;
  /** What leaves its range, e.g. `VelocityBeyondLaw`. */
  readonly code: LawWarningCode;
  readonly found: number;
  /** Greatest value for which the law is trusted. */
  readonly most: number;
  /** Unit of both, `(-)` for none. */
  readonly unit: string;
}

/** Proof of one solved balance, in words a reader can check. */
export interface ProofSummary {
  readonly iterations: number;
  /** Largest imbalance of any zone over the flow through it [-]. */
  readonly largestRelativeResidual: number;
  /**
   * Every solution with columns that stand as in this balance lies within this of the pressures given [Pa]; absent
   * where it could not be shown.
   */
  readonly enclosureRadiusPa?: number;
  /** No other balance is possible, whichever way air goes in shafts and flues. */
  readonly unique: boolean;
  readonly worstZone?: string;
  readonly worstLink?: string;
  /** Bound on what the smooth part of the flow laws around zero adds to a pressure [Pa]. */
  readonly regularisationPa: number;
}

/** Identifies one solve of a study: a state in a weather at an airtightness. */
export interface Situation {
  readonly state: OperatingState;
  /** The state in words, e.g. `hood high + dryer; bedroom door shut`. */
  readonly label: string;
  readonly weather: string;
  readonly airtightness: string;
}

/** How many balances a situation has in which air may go either way in shafts, vertical ducts and flues. */
export interface BalanceCount {
  /** Stable balances that were found. */
  readonly stableBalances: number;
  /** These are all; where not, all that were left out lie between them in every zone. */
  readonly counted: boolean;
  /** No balance that is lower or higher in any zone can have been missed. */
  readonly complete: boolean;
}

/** How the columns of shafts, vertical ducts and flues stand in the balance shown. */
export interface ColumnFindings extends BalanceCount {
  readonly states: readonly {
    /** Name of the item in the house file. */
    readonly item: string;
    /** Id of its link. */
    readonly link: string;
    readonly state: 'upward' | 'downward' | 'still';
  }[];
}

/** A solved situation. */
export interface StateBalance extends Situation {
  readonly status: 'solved';
  readonly zones: readonly ZonePressure[];
  readonly devices: readonly DeliveredFlow[];
  readonly makeUp: readonly MakeUpFlow[];
  /**
   * Present where air in a shaft or flue may go either way, or a fan runs that stalls; flows are those of the
   * balance that it tells of.
   */
  readonly columns?: ColumnFindings;
  /** Present where that holds for its baseline. */
  readonly baselineColumns?: BalanceCount;
  /** Parts whose law is used beyond its range; absent where there is none. */
  readonly warnings?: readonly LawRangeWarning[];
  readonly proof: ProofSummary;
}

/** A situation that could not be solved. It has no pressures. */
export interface UnsolvedState extends Situation {
  readonly status: 'not solved';
  /** The solver's outcome, e.g. `infeasible`. */
  readonly reason: string;
  /** Zones or links concerned, by name. */
  readonly concerns: readonly string[];
  readonly hint: string;
}
