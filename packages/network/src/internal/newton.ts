import type { Kernel } from './kernel.js';
import { factorize, solveFactorized } from './skyline.js';
import { evaluateLaws, gatherFlows, gatherMatrix, gatherRounding } from './sweep.js';

/** How an iteration ended, and what it took. */
export interface Iteration {
  converged: boolean;
  iterations: number;
  lawSweeps: number;
  /** Greatest residual over what the stop test allows [-]. */
  excess: number;
}

/** When the iteration stops. */
export interface IterationLimits {
  readonly tolerance: number;
  readonly maximumIterations: number;
}

/** A slope at the trial point below this part of the slope at the start ends the search. */
const slopeRatio = 0.3;
const mostTrials = 60;

/**
 * Damped Newton on the convex potential whose gradient is the residual, from `kernel.pressure`.
 *
 * Along a step d the slope of the potential is psi(t) = F(p + t d) · d, which only rises with t. A trial is
 * taken when
 * (a) psi ≤ 0, and t = 1 or psi ≥ −0.3 |psi(0)|: the potential has fallen all the way; or
 * (b) psi ≤ 0.3 |psi(0)| and the greatest residual over its allowance is at most half the least so far.
 * Otherwise t is narrowed by a safeguarded secant between a falling and a rising slope. (a) makes the
 * potential fall by at least a fixed part of |psi(0)|; (b) can happen only finitely often before the stop
 * test holds; so the iteration ends. The whole argument is in MATHEMATICS.md.
 */
export function iterate(kernel: Kernel, limits: IterationLimits): Iteration {
  const { zoneCount, pressure, trial, step, residual } = kernel;
  const result: Iteration = { converged: false, iterations: 0, lawSweeps: 1, excess: Infinity };
  trial.set(pressure);
  evaluateLaws(kernel, pressure);
  gatherFlows(kernel);
  let excess = residualExcess(kernel, limits.tolerance);
  let best = excess;

  while (!stopped(kernel, limits.tolerance, excess, result.excess)) {
    result.excess = excess;
    if (result.iterations === limits.maximumIterations) return result;
    result.iterations++;
    if (!newtonStep(kernel)) return result;
    let start = 0;
    for (let zone = 0; zone < zoneCount; zone++) start += residual[zone]! * step[zone]!;

    let low = 0;
    let slopeLow = start;
    let high = Infinity;
    let slopeHigh = 0;
    let t = 1;
    for (let trials = 1; ; trials++) {
      for (let zone = 0; zone < zoneCount; zone++) trial[zone] = pressure[zone]! + t * step[zone]!;
      evaluateLaws(kernel, trial);
      gatherFlows(kernel);
      result.lawSweeps++;
      let slope = 0;
      for (let zone = 0; zone < zoneCount; zone++) slope += residual[zone]! * step[zone]!;
      excess = residualExcess(kernel, limits.tolerance);

      const falling = slope <= 0 && (t === 1 || slope >= slopeRatio * start);
      const contracting = slope <= -slopeRatio * start && excess <= 0.5 * best;
      if (falling || contracting || excess <= 1) break;
      if (trials === mostTrials) {
        if (low === 0) return result;
        break;
      }
      if (slope > 0) {
        high = t;
        slopeHigh = slope;
      } else {
        low = t;
        slopeLow = slope;
      }
      const secant = low + ((high - low) * slopeLow) / (slopeLow - slopeHigh);
      const margin = 0.1 * (high - low);
      t = Math.min(Math.max(secant, low + margin), high - margin);
    }
    best = Math.min(best, excess);
    for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = trial[zone]!;
  }
  result.converged = true;
  result.excess = excess;
  return result;
}

/** The step −H⁻¹F; where H is singular, with a shift that keeps each zone's step within about a kilopascal. */
function newtonStep(kernel: Kernel): boolean {
  const { zoneCount, residual, through, step, matrix } = kernel;
  gatherMatrix(kernel, kernel.state.slopeKgPerSPa);
  if (!factorize(matrix)) {
    let largest = 0;
    for (let zone = 0; zone < zoneCount; zone++) largest = Math.max(largest, through[zone]!);
    gatherMatrix(kernel, kernel.state.slopeKgPerSPa);
    for (let zone = 0; zone < zoneCount; zone++) {
      matrix.diagonal[zone] =
        matrix.diagonal[zone]! + 1e-3 * Math.max(through[zone]!, 1e-9 * largest, 1e-300);
    }
    if (!factorize(matrix)) return false;
  }
  for (let zone = 0; zone < zoneCount; zone++) step[zone] = -residual[zone]!;
  solveFactorized(matrix, step);
  return true;
}

/** Greatest residual over its allowance: half the tolerance times the flow through the zone, which counts as at least a millionth of the greatest. */
function residualExcess({ zoneCount, residual, through }: Kernel, tolerance: number): number {
  let largest = 0;
  for (let zone = 0; zone < zoneCount; zone++) largest = Math.max(largest, through[zone]!);
  const floor = 1e-6 * largest + 1e-300;
  let excess = 0;
  for (let zone = 0; zone < zoneCount; zone++) {
    const size = Math.abs(residual[zone]!) / Math.max(through[zone]!, floor);
    // Written so that a NaN counts as infinite.
    if (!(size <= excess)) excess = size <= Infinity ? size : Infinity;
  }
  return (2 * excess) / tolerance;
}

/** The residuals are within tolerance, or progress has ended and they are within what rounding explains. */
// eslint-disable-next-line max-params -- inner loop
function stopped(kernel: Kernel, tolerance: number, excess: number, before: number): boolean {
  if (excess <= 1) return true;
  if (!(excess >= 0.25 * before)) return false;
  return withinRounding(kernel, tolerance);
}

function withinRounding(kernel: Kernel, tolerance: number): boolean {
  const { zoneCount, residual, through, rounding } = kernel;
  gatherRounding(kernel, kernel.trial);
  let largest = 0;
  for (let zone = 0; zone < zoneCount; zone++) largest = Math.max(largest, through[zone]!);
  for (let zone = 0; zone < zoneCount; zone++) {
    const allowed = 0.5 * tolerance * Math.max(through[zone]!, 1e-6 * largest) + rounding[zone]!;
    if (!(Math.abs(residual[zone]!) <= allowed)) return false;
  }
  return true;
}
