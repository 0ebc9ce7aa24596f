import { coefficientPerArea } from '../internal/coefficient-per-area.js';
import { requireNotNegative } from '../internal/require.js';
import type { LeakageAreaBasis } from './leakage-area-basis.js';

/** A leak known by its coefficient, whose leakage area is wanted. */
export interface LeakByCoefficient extends LeakageAreaBasis {
  /** Leakage coefficient at reference air [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow exponent n, 0.5 to 1 [-]. */
  readonly exponent: number;
}

/**
 * Leakage area of a leak whose coefficient is known [m2].
 *
 * A = (C/C_d) sqrt(rho_0/2) dp_r^(n − 0.5), the inverse of `coefficientFromLeakageArea`.
 *
 * @param leak - coefficient at reference air, exponent and the basis of the area
 * @returns leakage area on that basis [m2]
 *
 * Source: ASHRAE Handbook Fundamentals 2009/2017, chapter 16, effective leakage area (from memory).
 */
export function leakageAreaFromCoefficient(leak: LeakByCoefficient): number {
  requireNotNegative('coefficientM3PerSPaN', leak.coefficientM3PerSPaN);
  return leak.coefficientM3PerSPaN / coefficientPerArea(leak, leak.exponent);
}
