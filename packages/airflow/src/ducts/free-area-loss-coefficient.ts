import { requireBetween, requirePositive } from '../internal/require.js';

/** An opening in the way of a duct, known by its free area. */
export interface OpeningInDuct {
  /** Area of the duct that the coefficient is to refer to [m2]. */
  readonly ductAreaM2: number;
  /** Free area of the louvre, cap or screen [m2]. */
  readonly freeAreaM2: number;
  /** Discharge coefficient of the free area, typically 0.6 [-]. */
  readonly dischargeCoefficient: number;
}

/**
 * Loss coefficient of an opening by its free area, by the duct's velocity pressure [-].
 *
 * K = (A/(Cd Afree))^2: the whole velocity pressure of the jet is lost, so that an outlet described so
 * has no further exit loss.
 *
 * @param opening - duct area, free area and discharge coefficient
 * @returns loss coefficient for a section of the duct law [-]
 *
 * Source: the sharp-edged opening of the orifice law, solved for the loss (derived).
 *
 * @example
 * freeAreaLossCoefficient({ ductAreaM2: 0.02, freeAreaM2: 0.02, dischargeCoefficient: 0.5 }); // => 4
 */
export function freeAreaLossCoefficient(opening: OpeningInDuct): number {
  const { ductAreaM2, freeAreaM2, dischargeCoefficient } = opening;
  requirePositive('ductAreaM2', ductAreaM2);
  requirePositive('freeAreaM2', freeAreaM2);
  requireBetween('dischargeCoefficient', dischargeCoefficient, [0.01, 1]);
  return (ductAreaM2 / (dischargeCoefficient * freeAreaM2)) ** 2;
}
