import type { Kernel, KernelGroup } from './kernel.js';
import { factorize, solveFactorized } from './skyline.js';
import { addToZones, clearSums, fillMatrix, readDifferences } from './sweep.js';

/**
 * Sets `kernel.pressure` to a good start, in two linear solves and without evaluating a law.
 *
 * First every law is its chord over ±4 Pa, as it was when the network was built; the factors of that matrix
 * are kept until a link's scale changes. Then each law that has an inverse is replaced by its tangent at the
 * flow that the first solve gave it: one step of the method that iterates on flows, whose laws, of exponents
 * from 1 to 2, suit Newton far better near zero than their inverses do. Zero where the chords are singular.
 */
export function findStart(kernel: Kernel): void {
  const { zoneCount, pressure, step, residual, matrix, groups, tally, chords } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = 0;
  if (chords.state === 'unknown') factorizeChords(kernel);
  if (chords.state === 'singular') return;
  clearSums(kernel, pressure);
  addChordsAtZero(kernel);
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = -residual[zone]!;
  solveFactorized(chords.matrix, pressure);

  clearSums(kernel, pressure);
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!;
    if (group.begin === group.end || group.constant) continue;
    if (group.tallyStartBlock === undefined) startByBlock(kernel, group);
    else group.tallyStartBlock(group, tally);
  }
  fillMatrix(kernel);
  if (!factorize(matrix)) return;
  for (let zone = 0; zone < zoneCount; zone++) step[zone] = -residual[zone]!;
  solveFactorized(matrix, step);
  let finite = true;
  for (let zone = 0; zone < zoneCount; zone++) {
    pressure[zone] = pressure[zone]! + step[zone]!;
    // Written so that a NaN is found too.
    if (!(Math.abs(pressure[zone]!) < Infinity)) finite = false;
  }
  if (!finite) for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = 0;
}

/** Sums of the flows of all chords with no pressure in the zones. */
function addChordsAtZero({ groups, tally }: Kernel): void {
  const { residual, from, to, drivePa, chordFlow, chordSlope } = tally;
  for (let g = 0; g < groups.length; g++) {
    const { begin, end, constant } = groups[g]!;
    if (constant) continue;
    for (let link = begin; link < end; link++) {
      const start = from[link]!;
      const other = to[link]!;
      const flow = chordFlow[link]! + chordSlope[link]! * drivePa[link]!;
      residual[start] = residual[start]! + flow;
      residual[other] = residual[other]! - flow;
    }
  }
}

function factorizeChords(kernel: Kernel): void {
  const { chords, matrix, activeCount, tally } = kernel;
  const { chordSlope, state } = tally;
  clearSums(kernel, kernel.pressure);
  for (let link = 0; link < activeCount; link++) state.slopeKgPerSPa[link] = chordSlope[link]!;
  for (const group of kernel.groups) addToZones(kernel, group);
  fillMatrix(kernel);
  chords.state = factorize(matrix) ? 'factorized' : 'singular';
  chords.matrix.entries.set(matrix.entries);
  chords.matrix.diagonal.set(matrix.diagonal);
}

/** The tangents of a group at the flows of its chords; the chords themselves where the law has no inverse. */
function startByBlock(kernel: Kernel, group: KernelGroup): void {
  const { pressurePa, from, to, drivePa, chordFlow, chordSlope, state } = kernel.tally;
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const { begin, end, law } = group;
  readDifferences(kernel, group);
  for (let link = begin; link < end; link++) {
    massFlowKgPerS[link] = chordFlow[link]! + chordSlope[link]! * pressureDifferencePa[link]!;
    slopeKgPerSPa[link] = chordSlope[link]!;
  }
  if (law.inverseBlock !== undefined) {
    law.inverseBlock(group, state);
    // The tangent at (x, m) has, at the pressures of the first solve, the flow m + slope (difference − x).
    for (let link = begin; link < end; link++) {
      const difference = pressurePa[from[link]!]! - pressurePa[to[link]!]! + drivePa[link]!;
      massFlowKgPerS[link] =
        massFlowKgPerS[link]! + slopeKgPerSPa[link]! * (difference - pressureDifferencePa[link]!);
    }
  }
  addToZones(kernel, group);
}
