import type { Kernel } from './kernel.js';
import { factorize, solveFactorized } from './skyline.js';
import { fillMatrix, gatherZones } from './sweep.js';

/** Half-length of the chord that replaces each law in the first, linear solve [Pa]. */
const startChordPa = 4;

/**
 * Sets `kernel.pressure` to a good start, in two linear solves and no law evaluation but the chords'.
 *
 * First every law is its chord over ±4 Pa. Then each law that has an inverse is replaced by its tangent at the
 * flow that the first solve gave it: one step of the method that iterates on flows, whose laws, of exponents
 * from 1 to 2, suit Newton far better near zero than their inverses do. Zero where the chords are singular.
 *
 * @returns how many times every law was evaluated
 */
export function findStart(kernel: Kernel): number {
  const { zoneCount, activeCount, pressure, state } = kernel;
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const sweeps = findChords(kernel);
  const { activeFrom, activeTo, activeDrivePa, chordSlope, chordFlow } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = 0;
  for (let link = 0; link < activeCount; link++) {
    const difference =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + activeDrivePa[link]!;
    massFlowKgPerS[link] = chordFlow[link]! + chordSlope[link]! * difference;
    slopeKgPerSPa[link] = chordSlope[link]!;
  }
  if (!linearStep(kernel)) return sweeps;

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
  return sweeps;
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

function findChords(kernel: Kernel): number {
  if (kernel.chordsKnown) return 0;
  const { activeCount, state, chordSlope, chordFlow } = kernel;
  evaluateAt(kernel, startChordPa);
  for (let link = 0; link < activeCount; link++) chordFlow[link] = state.massFlowKgPerS[link]!;
  evaluateAt(kernel, -startChordPa);
  for (let link = 0; link < activeCount; link++) {
    const above = chordFlow[link]!;
    const below = state.massFlowKgPerS[link]!;
    chordFlow[link] = 0.5 * (above + below);
    chordSlope[link] = (above - below) / (2 * startChordPa);
  }
  kernel.chordsKnown = true;
  return 2;
}

function evaluateAt({ activeCount, state, groups }: Kernel, differencePa: number): void {
  state.pressureDifferencePa.fill(differencePa, 0, activeCount);
  for (const group of groups) if (group.begin < group.end) group.law.block(group, state);
}
