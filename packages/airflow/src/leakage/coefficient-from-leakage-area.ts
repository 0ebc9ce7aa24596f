import { coefficientPerArea } from '../internal/coefficient-per-area.js';
import { requireNotNegative } from '../internal/require.js';
import type { LeakageAreaBasis } from './leakage-area-basis.js';

/** A leak known by a leakage area. */
export interface LeakByArea extends LeakageAreaBasis {
  /** Leakage area [m2]. */
  readonly areaM2: number;
  /** Flow exponent n, 0.5 to 1 [-]. */
  readonly exponent: number;
}

/**
 * Leakage coefficient at reference air, from a leakage area [m3/(s Pa^n)].
 *
 * C = C_d A sqrt(2/rho_0) dp_r^(0.5 − n): at the reference pressure the leak passes what a sharp
 * opening of that area and discharge coefficient would pass.
 *
 * @param leak - area, its basis and the exponent
 * @returns leakage coefficient [m3/(s Pa^n)]
 *
 * Source: ASHRAE Handbook Fundamentals 2009/2017, chapter 16, effective leakage area (from memory).
 *
 * @example
 * coefficientFromLeakageArea({ areaM2: 0.05, ...effectiveLeakageAreaBasis, exponent: 0.65 });
 * // => 0.05234
 */
export function coefficientFromLeakageArea(leak: LeakByArea): number {
  requireNotNegative('areaM2', leak.areaM2);
  return leak.areaM2 * coefficientPerArea(leak, leak.exponent);
}
