import type { Assumption } from '@evendraft/house';
import type { RuleFinding } from '@evendraft/rules';
import type {
  ClosedDamperLeakage,
  ExhaustCurveStudy,
  MakeUpBuilt,
  RemedyKind,
  SizeDimension,
  SizingResult,
  YearlyAirHeat,
  YearlyAirStudy,
} from '@evendraft/studies';
import type { FailureExtreme, FailureRow } from './air/failure-rows.js';
import type { CodeReading } from './remedy-facts.js';

/** What the air that the largest exhaust draws in takes over a year; plain JSON. */
export interface RemedyYear {
  /** Heating, cooling and fan together, by the hours where the year has them, else by degree days [kWh]. */
  readonly totalKWh: number;
  /** The fan of powered make-up air; 0 for other remedies [kWh]. */
  readonly fanKWh: number;
  /** Each hour by the balance in its own weather; absent where the year has degree days alone. */
  readonly byHours?: YearlyAirStudy;
  /** The flow of the coldest weather in every hour, and the degree days of the year to 20 °C, our choice. */
  readonly byDegreeDays: YearlyAirHeat;
}

/** One remedy beside others; plain JSON. */
export interface RemedyRow {
  readonly kind: RemedyKind;
  readonly remedy: string;
  readonly dimension: SizeDimension;
  /** Where its air comes from and by what duct; absent where it brings no air from outside. */
  readonly built?: MakeUpBuilt;
  /** Size with margins, or why none does it. */
  readonly sizing: SizingResult;
  /** The state in which the numbers below are taken: the largest exhaust at its highest speed, coldest weather. */
  readonly situation: string;
  /** The pressure against the flow of the largest exhaust, in that weather, with the remedy. */
  readonly exhaustCurve?: ExhaustCurveStudy;
  /** What the largest exhaust delivers there with the remedy [m³/s]. */
  readonly exhaustFlowM3PerS?: number;
  /** Speed of the make-up air where it leaves the opening [m/s]. */
  readonly faceVelocityMPerS?: number;
  /** The speed of the make-up air held against guidance. */
  readonly guidance: readonly RuleFinding[];
  /** Highest pressure of any room inside over all states and weathers, a control band at its upper end. */
  readonly highest?: FailureExtreme;
  /** The house with it as it is, then with one thing of it failed; empty where nothing of it can fail. */
  readonly failures: readonly FailureRow[];
  /** What its closed damper adds to an airtightness test; absent where it has none. */
  readonly closedDamper?: ClosedDamperLeakage;
  /** Heat of all air that the devices draw in there [W]. */
  readonly inducedHeatW?: number;
  /** Heat that brings make-up air up to the least temperature at which it may be delivered [W]. */
  readonly temperingW?: number;
  /** Energy of a year for the hours of use; absent where no year was given. */
  readonly year?: RemedyYear;
  readonly upkeep: readonly string[];
  readonly code: readonly CodeReading[];
  readonly assumptions: readonly Assumption[];
}
