/** What a leakage area is stated at: without both numbers it means nothing. */
export interface LeakageAreaBasis {
  /** Reference pressure [Pa]. */
  readonly referencePressurePa: number;
  /** Discharge coefficient [-]. */
  readonly dischargeCoefficient: number;
}

/**
 * Basis of the effective leakage area: 4 Pa and a discharge coefficient of 1.
 *
 * Source: ASTM E779-10/19, effective leakage area (from memory).
 */
export const effectiveLeakageAreaBasis: LeakageAreaBasis = Object.freeze({
  referencePressurePa: 4,
  dischargeCoefficient: 1,
});

/**
 * Basis of the equivalent leakage area: 10 Pa and a discharge coefficient of 0.611.
 *
 * Source: CAN/CGSB-149.10-M86, equivalent leakage area (from memory).
 */
export const equivalentLeakageAreaBasis: LeakageAreaBasis = Object.freeze({
  referencePressurePa: 10,
  dischargeCoefficient: 0.611,
});
