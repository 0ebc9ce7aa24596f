import { requireNotNegative, requirePositive } from '../internal/require.js';

/** Duct that a fitting sits in, as far as length and loss are exchanged. */
export interface FittedDuct {
  /** Friction factor at the flow in question [-]. */
  readonly frictionFactor: number;
  /** Hydraulic diameter [m]. */
  readonly hydraulicDiameterM: number;
}

/**
 * Length of straight duct that loses as much as a fitting [m].
 *
 * L = K Dh/f. It holds at the friction factor that is given; the loss coefficient is the better constant.
 *
 * @param lossCoefficient - loss of the fitting in velocity pressures [-]
 * @param duct - friction factor and hydraulic diameter
 * @returns equivalent length [m]
 *
 * Source: Darcy-Weisbach, solved for the length (derived).
 *
 * @example
 * equivalentLength(0.2, { frictionFactor: 0.02, hydraulicDiameterM: 0.15 }); // => 1.5
 */
export function equivalentLength(lossCoefficient: number, duct: FittedDuct): number {
  requireNotNegative('lossCoefficient', lossCoefficient);
  requirePositive('frictionFactor', duct.frictionFactor);
  requirePositive('hydraulicDiameterM', duct.hydraulicDiameterM);
  return (lossCoefficient * duct.hydraulicDiameterM) / duct.frictionFactor;
}

/**
 * Loss coefficient of a fitting known by its equivalent length [-].
 *
 * K = f L/Dh, the inverse of `equivalentLength`.
 *
 * @param equivalentLengthM - length of straight duct that loses as much [m]
 * @param duct - friction factor and hydraulic diameter
 * @returns loss of the fitting in velocity pressures [-]
 *
 * @example
 * lossFromEquivalentLength(1.5, { frictionFactor: 0.02, hydraulicDiameterM: 0.15 }); // => 0.2
 */
export function lossFromEquivalentLength(equivalentLengthM: number, duct: FittedDuct): number {
  requireNotNegative('equivalentLengthM', equivalentLengthM);
  requirePositive('frictionFactor', duct.frictionFactor);
  requirePositive('hydraulicDiameterM', duct.hydraulicDiameterM);
  return (duct.frictionFactor * equivalentLengthM) / duct.hydraulicDiameterM;
}
