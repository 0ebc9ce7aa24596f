import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireBetween, requirePositive } from '../internal/require.js';
import type { FanPoint } from './fan-point.js';

/** A device known by one flow, and what is assumed of its fan and duct. */
export interface RatedFan {
  /** Flow at the rating pressure and highest speed [m3/s]. */
  readonly ratedFlowM3PerS: number;
  /** Pressure rise of the bare fan at which that flow is stated [Pa]. */
  readonly ratingPressurePa: number;
  /** Pressure rise of the bare fan at zero flow and highest speed [Pa]. */
  readonly shutOffPressurePa: number;
  /** Rated flow at the speed that runs, at most the highest; the highest when absent [m3/s]. */
  readonly speedFlowM3PerS?: number;
  /**
   * Pressure that the duct takes at rated flow [Pa]. When absent, the assumed duct takes the whole
   * rating pressure; 0 leaves the bare fan, for a duct that is modelled apart.
   */
  readonly ductPressurePa?: number;
}

/** Flows of the points as shares of the free flow: dense at shut-off, where the slope is endless. */
const flowShares: readonly number[] = [
  0, 0.001, 0.002, 0.003, 0.004, 0.006, 0.008, 0.01, 0.015, 0.02, 0.03, 0.04, 0.06, 0.08, 0.1, 0.15,
  0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 1, 1.05,
  1.1, 1.15, 1.2, 1.25,
];

/**
 * Assumed curve of a device of which only the flow is known, as points of rise and flow.
 *
 * Fan: rise = r² P_so − (P_so − P_r)(Q/Q_r)²; duct: P_d (Q/Q_r)²; the points hold the fan's rise less
 * the duct's loss, that is, the rise between the rooms at its two ends. P_so is the shut-off pressure,
 * P_r the rating pressure, Q_r the rated flow, P_d the duct's loss at rated flow, and r the speed as a
 * share of the highest. With the assumed duct (P_d = P_r) a hood in a house under the suction s moves
 * Q = r Q_r sqrt(1 − s/(r² P_so)): its rated flow at s = 0, nothing at its own shut-off.
 *
 * The points run from shut-off to 1.25 times the free flow, where pressure in the house helps the
 * fan. Monotone cubic interpolation between them stays within 0.5 % of the free flow everywhere, and
 * within 0.5 % of the flow itself from 1 % of the free flow on.
 *
 * @param fan - the rated flow and what is assumed
 * @returns points in falling order of rise
 *
 * Source: fan laws (flow with speed, pressure with its square); the parabola is the simplest curve
 * through shut-off with a flat start and is common practice, no source. Typical values in
 * `typicalFans`.
 *
 * @example
 * typicalFanCurve({ ratedFlowM3PerS: 0.28, ratingPressurePa: 62.5, shutOffPressurePa: 224 })[0];
 * // => { pressureRisePa: 224, volumeFlowM3PerS: 0 }
 */
export function typicalFanCurve(fan: RatedFan): readonly FanPoint[] {
  const { ratedFlowM3PerS, ratingPressurePa, shutOffPressurePa } = fan;
  const { speedFlowM3PerS = ratedFlowM3PerS, ductPressurePa = ratingPressurePa } = fan;
  requirePositive('ratedFlowM3PerS', ratedFlowM3PerS);
  requirePositive('shutOffPressurePa', shutOffPressurePa);
  if (!(ratingPressurePa >= 0 && ratingPressurePa < shutOffPressurePa)) {
    throw new AirflowArgumentError(
      'ratingPressurePa',
      ratingPressurePa,
      'a number from 0 to below the shut-off pressure',
    );
  }
  requirePositive('speedFlowM3PerS', speedFlowM3PerS);
  requireBetween('speedFlowM3PerS', speedFlowM3PerS, [0, ratedFlowM3PerS]);
  requireBetween('ductPressurePa', ductPressurePa, [0, Infinity]);

  const speed = speedFlowM3PerS / ratedFlowM3PerS;
  const shutOffAtSpeed = speed * speed * shutOffPressurePa;
  // What fan and duct together lose at rated flow decides at which flow no rise is left.
  const lossAtRatedFlow = shutOffPressurePa - ratingPressurePa + ductPressurePa;
  const freeFlow = speedFlowM3PerS * Math.sqrt(shutOffPressurePa / lossAtRatedFlow);
  return flowShares.map((share) => ({
    pressureRisePa: shutOffAtSpeed * (1 - share * share),
    volumeFlowM3PerS: freeFlow * share,
  }));
}
