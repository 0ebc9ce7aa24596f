import type { FailureRow, HowFar } from '@evendraft/remedies';
import type { RuleFinding } from '@evendraft/rules';
import type { ClosedDamperLeakage, DryerStudy } from '@evendraft/studies';

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
