import type { Air } from '../air/air.js';
import { referenceAir } from '../air/reference-air.js';
import { requireBetween, requireNotNegative, requirePositive } from '../internal/require.js';

/** A leakage coefficient measured in air that was not reference air. */
export interface MeasuredCoefficient {
  /** Coefficient of the volume flow of the air that entered the leaks [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow exponent n, 0.5 to 1 [-]. */
  readonly exponent: number;
  /** The air that entered the leaks: outdoor when depressurizing, indoor when pressurizing. */
  readonly air: Pick<Air, 'densityKgPerM3' | 'viscosityPaS'>;
}

/**
 * Leakage coefficient at reference air, from one measured in other air [m3/(s Pa^n)].
 *
 * C_0 = C (mu/mu_0)^(2n − 1) (rho/rho_0)^(1 − n). The power law among the flow laws goes back by the
 * same factor, so that a house tested in cold air and solved in that air leaks what was measured.
 *
 * @param measured - coefficient, exponent and the air in the leaks
 * @returns leakage coefficient at 20 °C and 101325 Pa [m3/(s Pa^n)]
 *
 * Source: ASTM E779-10/19, section 9.6 (from memory).
 *
 * @example
 * coefficientAtReferenceAir({
 *   coefficientM3PerSPaN: 0.05,
 *   exponent: 0.65,
 *   air: airAt({ temperatureC: -10, altitudeM: 0 }),
 * }); // => 0.05062
 */
export function coefficientAtReferenceAir(measured: MeasuredCoefficient): number {
  const { coefficientM3PerSPaN, exponent, air } = measured;
  requireNotNegative('coefficientM3PerSPaN', coefficientM3PerSPaN);
  requireBetween('exponent', exponent, [0.5, 1]);
  requirePositive('air.densityKgPerM3', air.densityKgPerM3);
  requirePositive('air.viscosityPaS', air.viscosityPaS);
  return (
    coefficientM3PerSPaN *
    (air.viscosityPaS / referenceAir.viscosityPaS) ** (2 * exponent - 1) *
    (air.densityKgPerM3 / referenceAir.densityKgPerM3) ** (1 - exponent)
  );
}
