import { requirePositive } from '../internal/require.js';
import type { PowerLawDescription } from '../laws/flow-law-description.js';
import {
  damperLeakageClasses,
  type DamperLeakage,
  type DamperLeakageClass,
} from './damper-leakage-classes.js';

/** A damper that is shut, by area and leakage. */
export interface ClosedDamper {
  /** Area of the damper [m2]. */
  readonly areaM2: number;
  /** A published class, or a flow by area at a pressure. */
  readonly leakage: DamperLeakageClass | DamperLeakage;
}

/**
 * Law of a damper that is shut: a motorized one at rest, any one stuck shut.
 *
 * Q = A q (dP/dPq)^0.5, either way. The exponent 0.5 is that of the classes themselves: what they allow at
 * 4 in. w.c. is twice what they allow at 1 in. w.c. (from memory).
 *
 * @param damper - area and leakage
 * @returns a leak of exponent 0.5
 *
 * @example
 * closedDamperLaw({ areaM2: 0.05, leakage: 'EN 1751 class 3' }).coefficientM3PerSPaN; // => 0.00004
 */
export function closedDamperLaw({ areaM2, leakage }: ClosedDamper): PowerLawDescription {
  requirePositive('areaM2', areaM2);
  const stated = typeof leakage === 'string' ? damperLeakageClasses[leakage] : leakage;
  requirePositive('leakageM3PerSM2', stated.leakageM3PerSM2);
  requirePositive('pressurePa', stated.pressurePa);
  return {
    kind: 'powerLaw',
    coefficientM3PerSPaN: (areaM2 * stated.leakageM3PerSM2) / Math.sqrt(stated.pressurePa),
    exponent: 0.5,
  };
}
