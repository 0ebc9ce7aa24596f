import { requirePositive } from '../internal/require.js';
import type { FanPoint } from './fan-point.js';

/** What is different from the fan whose curve is known, each 1 where absent. */
export interface FanChange {
  /** Speed by the known speed [-]. */
  readonly speedRatio?: number;
  /** Wheel by the known wheel, of the same shape [-]. */
  readonly diameterRatio?: number;
  /** Density of the air by that of the known curve [-]. */
  readonly densityRatio?: number;
}

/**
 * Curve of a fan at another speed, of another size or in other air, by the fan laws.
 *
 * Q2/Q1 = (N2/N1) (D2/D1)^3; P2/P1 = (N2/N1)^2 (D2/D1)^2 (rho2/rho1). Good as long as the efficiency stays:
 * down to about a third of the speed, and for wheels of the same shape.
 *
 * @param points - the known curve
 * @param change - ratios of speed, diameter and density
 * @returns points in the same order
 *
 * Source: fan laws, any textbook of fans (found at nrmurphy.com, fans laws).
 *
 * @example
 * fanBySimilarity([{ pressureRisePa: 100, volumeFlowM3PerS: 0.2 }], { speedRatio: 0.5 });
 * // => [{ pressureRisePa: 25, volumeFlowM3PerS: 0.1 }]
 */
export function fanBySimilarity(
  points: readonly FanPoint[],
  change: FanChange,
): readonly FanPoint[] {
  const { speed, diameter, density } = ratiosOf(change);
  return points.map(({ pressureRisePa, volumeFlowM3PerS }) => ({
    pressureRisePa: pressureRisePa * speed ** 2 * diameter ** 2 * density,
    volumeFlowM3PerS: volumeFlowM3PerS * speed * diameter ** 3,
  }));
}

/**
 * Shaft power of a fan at another speed, of another size or in other air, by the fan laws [W].
 *
 * W2/W1 = (N2/N1)^3 (D2/D1)^5 (rho2/rho1), at the same point of the curve.
 *
 * @param powerW - the known power [W]
 * @param change - ratios of speed, diameter and density
 * @returns power [W]
 *
 * @example
 * fanPowerBySimilarity(80, { speedRatio: 0.5 }); // => 10
 */
export function fanPowerBySimilarity(powerW: number, change: FanChange): number {
  const { speed, diameter, density } = ratiosOf(change);
  return powerW * speed ** 3 * diameter ** 5 * density;
}

function ratiosOf({ speedRatio = 1, diameterRatio = 1, densityRatio = 1 }: FanChange) {
  requirePositive('speedRatio', speedRatio);
  requirePositive('diameterRatio', diameterRatio);
  requirePositive('densityRatio', densityRatio);
  return { speed: speedRatio, diameter: diameterRatio, density: densityRatio };
}
