import { requireBetween, requirePositive } from '../internal/require.js';
import type { OrificeDescription } from '../laws/flow-law-description.js';
import type { Provenance } from '../provenance.js';

/** A fan that is off and turns freely, by its outlet or by its rated flow. */
export interface OffFan {
  /** Rated flow, from which the outlet area follows where none is given [m3/s]. */
  readonly ratedFlowM3PerS: number;
  /** Area of the outlet, to which the loss coefficient refers [m2]. */
  readonly outletAreaM2?: number;
  /** Loss of the still or freely turning wheel in velocity pressures [-]. */
  readonly lossCoefficient?: number;
}

/** What is assumed of a fan that is off. */
export const offFanAssumptions: Readonly<{
  /** Velocity in the outlet at rated flow [m/s]. */
  outletVelocityMPerS: number;
  /** Loss coefficient by the outlet's velocity pressure [-]. */
  lossCoefficient: number;
}> &
  Provenance = Object.freeze({
  outletVelocityMPerS: 7,
  lossCoefficient: 4,
  source:
    'our choice, no source: outlets of household fans are sized for about 7 m/s at rated flow; a wheel that turns freely loses a few velocity pressures, either way',
  status: 'assumed',
} as const);

/**
 * Law of a fan that is off: an opening through which air passes either way.
 *
 * dP = K rho v^2/2 with the velocity in its outlet. A damper behind the fan is a link of its own.
 *
 * @param fan - rated flow, outlet area and loss as far as they are known
 * @returns an opening of Cd = 1/sqrt(K)
 *
 * @example
 * offFanLaw({ ratedFlowM3PerS: 0.28 });
 * // => { kind: 'orifice', areaM2: 0.04, dischargeCoefficient: 0.5 }
 */
export function offFanLaw(fan: OffFan): OrificeDescription {
  const { outletVelocityMPerS, lossCoefficient: assumedLoss } = offFanAssumptions;
  requirePositive('ratedFlowM3PerS', fan.ratedFlowM3PerS);
  const areaM2 = fan.outletAreaM2 ?? fan.ratedFlowM3PerS / outletVelocityMPerS;
  const lossCoefficient = fan.lossCoefficient ?? assumedLoss;
  requirePositive('outletAreaM2', areaM2);
  requireBetween('lossCoefficient', lossCoefficient, [0.25, 1e4]);
  return { kind: 'orifice', areaM2, dischargeCoefficient: 1 / Math.sqrt(lossCoefficient) };
}
