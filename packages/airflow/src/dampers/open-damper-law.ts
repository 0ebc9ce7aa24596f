import { requireBetween, requirePositive } from '../internal/require.js';
import type { OrificeDescription } from '../laws/flow-law-description.js';

/** A damper that stands open, by area and loss. */
export interface OpenDamper {
  /** Area of the damper, to which the loss coefficient refers [m2]. */
  readonly areaM2: number;
  /** Loss in velocity pressures, 0.25 to 10,000 [-]. */
  readonly openLossCoefficient: number;
}

/**
 * Law of a damper that stands open both ways: a motorized one that runs, any one stuck open.
 *
 * dP = K rho v^2/2, as the opening of the same area with Cd = 1/sqrt(K).
 *
 * @param damper - area and loss coefficient
 * @returns an opening
 *
 * @example
 * openDamperLaw({ areaM2: 0.05, openLossCoefficient: 4 }).dischargeCoefficient; // => 0.5
 */
export function openDamperLaw({ areaM2, openLossCoefficient }: OpenDamper): OrificeDescription {
  requirePositive('areaM2', areaM2);
  requireBetween('openLossCoefficient', openLossCoefficient, [0.25, 1e4]);
  return { kind: 'orifice', areaM2, dischargeCoefficient: 1 / Math.sqrt(openLossCoefficient) };
}
