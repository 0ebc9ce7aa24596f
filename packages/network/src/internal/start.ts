import type { Kernel } from './kernel.js';
import { factorize, solveFactorized } from './skyline.js';
import { gatherMatrix, gatherFlows } from './sweep.js';

/** Half-length of the chord that replaces each law in the first, linear solve [Pa]. */
const startChordPa = 4;

/**
 * Pressures of the network with every law replaced by its chord over ±4 Pa; zero where that is singular.
 *
 * @returns how many times every law was evaluated
 */
export function linearStart(kernel: Kernel): number {
  const { zoneCount, activeCount, pressure, residual, step, matrix, state } = kernel;
  const sweeps = findChords(kernel);
  const { activeFrom, activeTo, activeDrivePa, chordSlope, chordFlow } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = 0;
  for (let link = 0; link < activeCount; link++) {
    const difference =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + activeDrivePa[link]!;
    state.massFlowKgPerS[link] = chordFlow[link]! + chordSlope[link]! * difference;
  }
  gatherFlows(kernel);
  gatherMatrix(kernel, chordSlope);
  if (!factorize(matrix)) return sweeps;
  for (let zone = 0; zone < zoneCount; zone++) step[zone] = -residual[zone]!;
  solveFactorized(matrix, step);
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = step[zone]!;
  return sweeps;
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
