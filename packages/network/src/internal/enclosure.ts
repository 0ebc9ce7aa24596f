import type { Kernel } from './kernel.js';
import { factorize, solveFactorized } from './zone-matrix.js';
import { fillMatrix, gatherRounding, sweepLinks } from './sweep.js';

/** What an attempt to enclose every solution found. */
export interface Enclosure {
  /** Every solution lies within this of the pressures; undefined where it could not be shown [Pa]. */
  readonly radiusPa: number | undefined;
  readonly lawSweeps: number;
}

const mostCorrections = 32;
/** After so many corrections they are halved, and the residuals aimed at grow: full ones can leap a damper's kink for ever. */
const fullCorrections = 16;
const leastWidthPa = 1e-14;

/**
 * Encloses every solution around `kernel.pressure`, where laws and flows have just been evaluated.
 *
 * If every zone loses air at the pressures p⁺ and gains air at p⁻, then a solution exists between the two,
 * and every solution lies there: take the zones where a solution exceeds p⁺ the most; every link that leaves
 * them carries no less than at p⁺, so together they lose air, and it is no solution. Only monotone links are
 * needed. p⁺ and p⁻ are found by Newton steps from p towards residuals of twice those at p, rounding included;
 * rounding counts against the claim.
 * Source of the argument: Rheinboldt, J. Math. Anal. Appl. 32 (1970) 274-307, M-functions.
 */
export function enclose(kernel: Kernel): Enclosure {
  const { zoneCount, pressure, residual, rounding, target, slopeSum } = kernel;
  gatherRounding(kernel, pressure);
  for (let zone = 0; zone < zoneCount; zone++) {
    // The last part lets a zone with no flow at all, and so no rounding, move at least a little.
    target[zone] =
      2 * (Math.abs(residual[zone]!) + rounding[zone]!) + leastWidthPa * slopeSum[zone]!;
  }
  const above = findSide(kernel, 1);
  if (above.radiusPa === undefined) return above;
  sweepLinks(kernel, pressure);
  const below = findSide(kernel, -1);
  const lawSweeps = above.lawSweeps + 1 + below.lawSweeps;
  if (below.radiusPa === undefined) return { radiusPa: undefined, lawSweeps };
  return { radiusPa: Math.max(above.radiusPa, below.radiusPa), lawSweeps };
}

/** Looks, from p, for pressures at which every zone's residual has the sign of the side beyond rounding. */
function findSide(kernel: Kernel, side: 1 | -1): Enclosure {
  const { zoneCount, pressure, trial, step, residual, rounding, target, matrix } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) trial[zone] = pressure[zone]!;
  for (let lawSweeps = 1; lawSweeps <= mostCorrections; lawSweeps++) {
    fillMatrix(kernel, matrix);
    if (!factorize(matrix)) return { radiusPa: undefined, lawSweeps: lawSweeps - 1 };
    const part = lawSweeps > fullCorrections ? 0.5 : 1;
    const growth = 2 ** Math.max(lawSweeps - fullCorrections, 0);
    for (let zone = 0; zone < zoneCount; zone++) {
      step[zone] = side * growth * target[zone]! - residual[zone]!;
    }
    solveFactorized(matrix, kernel.stepAddress);
    for (let zone = 0; zone < zoneCount; zone++) trial[zone] = trial[zone]! + part * step[zone]!;
    sweepLinks(kernel, trial);
    gatherRounding(kernel, trial);
    let radiusPa = 0;
    let shown = true;
    for (let zone = 0; zone < zoneCount; zone++) {
      if (!(side * residual[zone]! > rounding[zone]!)) shown = false;
      radiusPa = Math.max(radiusPa, Math.abs(trial[zone]! - pressure[zone]!));
    }
    if (shown && radiusPa < Infinity) return { radiusPa, lawSweeps };
  }
  return { radiusPa: undefined, lawSweeps: mostCorrections };
}
