import type { HowFar } from '@evendraft/remedies';
import type { RuleFinding } from '@evendraft/rules';
import type { ClosedDamperLeakage, DryerStudy, FailureCase } from '@evendraft/studies';

/** The air of the house beside its appliances, and how far it may go, or why that was not solved. */
export type AirResults =
  /** Left out, with the reason as a sentence. */
  { readonly status: 'not solved'; readonly why: string } | SolvedAir;

/** What the air does beside the appliances. It is guidance: no number in it clears anything. */
export interface SolvedAir {
  readonly status: 'solved';
  /** Ground, garage wall, net flow by climate, doors, velocities, hoods. */
  readonly guidance: readonly RuleFinding[];
  /** Airtightness and exhaust at which appliances reach their limits, and what may run together. */
  readonly howFar: HowFar;
  /** Every dryer that exhausts air, in its arrangements. */
  readonly dryers: readonly DryerStudy[];
  /** The house as it is, then with one thing failed at a time; empty where nothing can fail. */
  readonly failures: readonly FailureRow[];
  /** What closed make-up dampers add to an airtightness test. */
  readonly closedDampers: readonly ClosedDamperLeakage[];
}

/** The house with one thing failed, over all situations; plain JSON. */
export interface FailureRow {
  /** What failed; absent for the house as it is. */
  readonly item?: string;
  readonly failure: FailureCase['failure'] | 'as it is';
  readonly lowest: FailureExtreme;
  readonly highest: FailureExtreme;
  /** Air that enters with nothing switched on, in the weather in which that is most [kg/s]. */
  readonly infiltrationKgPerS?: number;
  /** Whether every situation was covered. */
  readonly proved: boolean;
}

/** How far the pressure of zones inside the envelope goes one way. */
export interface FailureExtreme {
  readonly zone: string;
  /** Zone minus outdoors [Pa]. */
  readonly pressurePa: number;
  /** The situation in words. */
  readonly situation: string;
}
