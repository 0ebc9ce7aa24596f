import { balanceLaggards } from './balance-laggards.js';
import type { Kernel } from './kernel.js';
import { bendStep } from './curved-step.js';
import { searchAlongStep } from './line-search.js';
import { factorize } from './zone-matrix.js';
import { fillMatrix, sweepLinks } from './sweep.js';
import { residualExcess, withinRounding } from './stop-test.js';

/** When the iteration stops. */
export interface IterationLimits {
  readonly tolerance: number;
  readonly maximumIterations: number;
}

const stepsOnCredit = 20;

/**
 * Damped Newton on the convex potential whose gradient is the residual, from `kernel.pressure`; the outcome is in
 * `kernel.iteration`. Why it ends is in MATHEMATICS.md; how far it goes along each step is in line-search.ts.
 */
export function iterate(kernel: Kernel, { tolerance, maximumIterations }: IterationLimits): void {
  const { zoneCount, pressure, trial, iteration, laggards } = kernel;
  sweepLinks(kernel, pressure);
  const excess = residualExcess(kernel, tolerance);
  iteration.converged = false;
  iteration.iterations = 0;
  iteration.lawSweeps = 1;
  iteration.excess = excess;
  iteration.leastExcess = excess;
  iteration.credit = stepsOnCredit;
  let before = Infinity;
  while (iteration.excess > 1) {
    // Rounding is looked at only when progress has ended.
    if (iteration.excess >= 0.25 * before && withinRounding(kernel, tolerance)) break;
    // Bent steps can come to rest before the answer, at a link of exponent ½ that should carry nothing.
    const bends = iteration.excess < before;
    before = iteration.excess;
    if (iteration.iterations === maximumIterations) return;
    iteration.iterations++;
    if (!findStep(kernel, bends)) return;
    if (!searchAlongStep(kernel, tolerance)) return;
    if (laggards !== undefined && iteration.excess > 1) {
      balanceLaggards(kernel, laggards, tolerance);
    }
    for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = trial[zone]!;
  }
  iteration.converged = true;
}

/**
 * The step −H⁻¹F, bent to follow the laws if asked; where H is singular, straight, with a shift that keeps each zone's
 * step within about a kilopascal.
 */
function findStep(kernel: Kernel, bends: boolean): boolean {
  const { zoneCount, through, matrix, loops, address } = kernel;
  const regular = loops.newtonStep(address, matrix.address) !== 0;
  if (!regular) {
    let largest = 0;
    for (let zone = 0; zone < zoneCount; zone++) largest = Math.max(largest, through[zone]!);
    fillMatrix(kernel, matrix);
    for (let zone = 0; zone < zoneCount; zone++) {
      matrix.diagonal[zone] =
        matrix.diagonal[zone]! + 1e-3 * Math.max(through[zone]!, 1e-9 * largest, 1e-300);
    }
    if (!factorize(matrix)) return false;
    loops.residualStep(address, matrix.address);
  }
  if (regular && bends) bendStep(kernel);
  return true;
}
