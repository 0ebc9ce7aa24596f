import type { SizeDimension, SizingObstacle } from '@evendraft/studies';

/** Size of make-up air that a cure brings in. */
export interface MakeUpSize {
  /** In words, without the size. */
  readonly remedy: string;
  readonly dimension: SizeDimension;
  /** Inner diameter [m], or flow [m³/s] of a fan. */
  readonly size: number;
  /** Whether it alone keeps the limits; where it does not, the size is the one that comes closest. */
  readonly keepsLimits: boolean;
  /** What stands in the way where it does not. */
  readonly obstacle?: SizingObstacle;
}
