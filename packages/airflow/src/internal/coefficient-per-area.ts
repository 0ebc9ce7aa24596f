import { referenceAir } from '../air/reference-air.js';
import type { LeakageAreaBasis } from '../leakage/leakage-area-basis.js';
import { requireBetween, requirePositive } from './require.js';

/**
 * Leakage coefficient of a leak of one square metre [m/(s Pa^n)].
 *
 * C/A = C_d sqrt(2/rho_0) dp_r^(0.5 − n).
 */
export function coefficientPerArea(basis: LeakageAreaBasis, exponent: number): number {
  requirePositive('referencePressurePa', basis.referencePressurePa);
  requirePositive('dischargeCoefficient', basis.dischargeCoefficient);
  requireBetween('exponent', exponent, [0.5, 1]);
  const speedAtOnePascal = Math.sqrt(2 / referenceAir.densityKgPerM3);
  return (
    basis.dischargeCoefficient * speedAtOnePascal * basis.referencePressurePa ** (0.5 - exponent)
  );
}
