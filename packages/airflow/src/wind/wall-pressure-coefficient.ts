import { requireBetween, requirePositive } from '../internal/require.js';

/** A wall of a low building and the wind on it. */
export interface WallInWind {
  /** Incidence from the wall's outward normal, 0 to 180 [°]. */
  readonly incidenceDeg: number;
  /** Length of this wall divided by the length of the adjacent wall [-]. */
  readonly sideRatio: number;
}

/** The coefficient to which the correlation scales: wind square onto the wall [-]. */
const coefficientAtNormal = 0.6;

/**
 * Mean wind pressure coefficient of a wall of a low, rectangular, unsheltered building [-].
 *
 * C_p(a)/0.6 = ln[1.248 − 0.703 sin(a/2) − 1.175 sin²a + 0.131 sin³(2aG) + 0.769 cos(a/2)
 * + 0.07 G² sin²(a/2) + 0.717 cos²(a/2)], G = ln(side ratio). Fitted to 544 averages over walls of
 * buildings of up to three storeys with side ratios from 1/4 to 4 (correlation 0.80, so an error of
 * 0.1 in a coefficient is common); refuses ratios outside that range. It knows no neighbours: for a
 * sheltered wall see `lowRiseCoefficient`.
 *
 * Texts that restate the correlation differ in the sign of the 0.131 term. Here it is plus: at 90°
 * the long wall is then in weaker suction than the short wall, as in the tables for buildings of 2:1
 * plan. The sign has no effect on a square plan.
 *
 * @param wall - incidence and side ratio
 * @returns pressure coefficient, referred to the speed at eaves height [-]
 *
 * Source: Swami and Chandra, FSEC-CR-163-86 (1987), and ASHRAE Transactions 94(1), 1988 (from
 * memory; range of the side ratio too).
 *
 * @example
 * wallPressureCoefficient({ incidenceDeg: 90, sideRatio: 1 }); // => -0.4427
 */
export function wallPressureCoefficient(wall: WallInWind): number {
  const { incidenceDeg, sideRatio } = wall;
  requireBetween('incidenceDeg', incidenceDeg, [0, 180]);
  requirePositive('sideRatio', sideRatio);
  requireBetween('sideRatio', sideRatio, [0.25, 4]);
  const a = (incidenceDeg * Math.PI) / 180;
  const g = Math.log(sideRatio);
  const sine = Math.sin(a);
  const halfSine = Math.sin(a / 2);
  const halfCosine = Math.cos(a / 2);
  return (
    coefficientAtNormal *
    Math.log(
      1.248 -
        0.703 * halfSine -
        1.175 * sine * sine +
        0.131 * Math.sin(2 * a * g) ** 3 +
        0.769 * halfCosine +
        0.07 * g * g * halfSine * halfSine +
        0.717 * halfCosine * halfCosine,
    )
  );
}
