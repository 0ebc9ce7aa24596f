import type { Kernel } from './kernel.js';
import { factorize, solveFactorized } from './skyline.js';
import { fillMatrix, gatherZones } from './sweep.js';

/**
 * Sets `kernel.pressure` to a good start, in two linear solves and without evaluating a law.
 *
 * First every law is its chord over ±4 Pa, as it was when the network was built. Then each law that has an inverse is replaced by its tangent at the
 * flow that the first solve gave it: one step of the method that iterates on flows, whose laws, of exponents
 * from 1 to 2, suit Newton far better near zero than their inverses do. Zero where the chords are singular.
 */
export function findStart(kernel: Kernel): void {
  const { zoneCount, activeCount, pressure, state } = kernel;
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const { activeFrom, activeTo, activeDrivePa, chordSlope, chordFlow } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = 0;
  for (let link = 0; link < activeCount; link++) {
    const difference =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + activeDrivePa[link]!;
    massFlowKgPerS[link] = chordFlow[link]! + chordSlope[link]! * difference;
    slopeKgPerSPa[link] = chordSlope[link]!;
  }
  if (!linearStep(kernel)) return;

  for (let link = 0; link < activeCount; link++) {
    const difference =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + activeDrivePa[link]!;
    pressureDifferencePa[link] = difference;
    massFlowKgPerS[link] = chordFlow[link]! + chordSlope[link]! * difference;
  }
  for (const group of kernel.groups) {
    if (group.begin < group.end) group.law.inverseBlock?.(group, state);
  }
  // The tangent at (x, m) has, at the pressures of the first solve, the flow m + slope (difference − x).
  for (let link = 0; link < activeCount; link++) {
    const difference =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + activeDrivePa[link]!;
    massFlowKgPerS[link] =
      massFlowKgPerS[link]! + slopeKgPerSPa[link]! * (difference - pressureDifferencePa[link]!);
  }
  linearStep(kernel);
}

/** Moves the pressures to where the flows, taken as linear with their slopes, balance. */
function linearStep(kernel: Kernel): boolean {
  const { zoneCount, pressure, residual, step, matrix } = kernel;
  gatherZones(kernel);
  fillMatrix(kernel);
  if (!factorize(matrix)) return false;
  for (let zone = 0; zone < zoneCount; zone++) step[zone] = -residual[zone]!;
  solveFactorized(matrix, step);
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = pressure[zone]! + step[zone]!;
  return true;
}
