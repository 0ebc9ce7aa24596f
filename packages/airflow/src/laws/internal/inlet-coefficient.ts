import type { InletAir } from '../inlet-air.js';

/**
 * Mass-flow coefficient of a power law for the air that enters it [kg/(s Pa^n)].
 * rho C (rho0/rho)^(1−n) (mu0/mu)^(2n−1).
 * Source: ASTM E779-19, section 9, solved for the actual air, from memory.
 */
export function inletCoefficient(
  law: { readonly coefficientM3PerSPaN: number; readonly exponent: number },
  air: InletAir,
): number {
  const n = law.exponent;
  return (
    law.coefficientM3PerSPaN *
    air.densityKgPerM3 *
    Math.exp((n - 1) * air.logDensityRatio + (1 - 2 * n) * air.logViscosityRatio)
  );
}
