import type { Kernel } from './kernel.js';
import { factorize, solveFactorized } from './skyline.js';
import { evaluateLaws, gatherFlows, gatherMatrix, gatherRounding } from './sweep.js';

/** What an attempt to enclose every solution found. */
export interface Enclosure {
  /** Every solution lies within this of the pressures; undefined where it could not be shown [Pa]. */
  readonly radiusPa: number | undefined;
  readonly lawSweeps: number;
}

const mostAttempts = 6;

/**
 * Encloses every solution around `kernel.pressure`, where laws, flows and residuals have just been evaluated.
 *
 * If every zone loses air at p + w and gains air at p − w, then a solution exists between the two, and every
 * solution does: take the zones where a solution exceeds p + w the most; every link that leaves them carries
 * no less than at p + w, so together they lose air, and it is no solution. Only monotone links are needed.
 * w is H⁻¹ of twice the residual and its rounding, widened fourfold up to five times. Rounding counts
 * against the claim. Source of the argument: Rheinboldt, J. Math. Anal. Appl. 32 (1970) 274-307, M-functions.
 */
export function enclose(kernel: Kernel): Enclosure {
  const { zoneCount, pressure, residual, rounding, width, matrix } = kernel;
  gatherRounding(kernel, pressure);
  for (let zone = 0; zone < zoneCount; zone++) {
    width[zone] = 2 * (Math.abs(residual[zone]!) + rounding[zone]!);
  }
  gatherMatrix(kernel, kernel.state.slopeKgPerSPa);
  if (!factorize(matrix)) return { radiusPa: undefined, lawSweeps: 0 };
  solveFactorized(matrix, width);
  let lawSweeps = 0;
  for (let attempt = 0; attempt < mostAttempts; attempt++) {
    let radiusPa = 0;
    for (let zone = 0; zone < zoneCount; zone++) {
      // A step below the spacing of doubles would be no step.
      width[zone] = Math.max(width[zone]!, 4 * Number.EPSILON * Math.abs(pressure[zone]!), 1e-300);
      radiusPa = Math.max(radiusPa, width[zone]!);
    }
    if (!(radiusPa < Infinity)) break;
    lawSweeps++;
    if (everyZoneMoves(kernel, 1)) {
      lawSweeps++;
      if (everyZoneMoves(kernel, -1)) return { radiusPa, lawSweeps };
    }
    for (let zone = 0; zone < zoneCount; zone++) width[zone] = 4 * width[zone]!;
  }
  return { radiusPa: undefined, lawSweeps };
}

/** At p + side · w every zone's residual has the sign of the side, by more than its rounding. */
function everyZoneMoves(kernel: Kernel, side: 1 | -1): boolean {
  const { zoneCount, pressure, trial, width, residual, rounding } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) trial[zone] = pressure[zone]! + side * width[zone]!;
  evaluateLaws(kernel, trial);
  gatherFlows(kernel);
  gatherRounding(kernel, trial);
  for (let zone = 0; zone < zoneCount; zone++) {
    if (!(side * residual[zone]! > rounding[zone]!)) return false;
  }
  return true;
}
