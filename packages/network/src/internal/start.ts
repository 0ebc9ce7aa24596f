import { bendOf } from './curved-step.js';
import type { Kernel, KernelGroup } from './kernel.js';
import { factorize, solveFactorized } from './zone-matrix.js';
import { addToZones, clearSums, fillMatrix, readDifferences } from './sweep.js';

/**
 * Sets `kernel.pressure` to a good start, in two linear solves and without evaluating a law.
 *
 * First every law is its chord over ±4 Pa, as it was when the network was built; the factors of that matrix
 * are kept until a link's scale changes. Then each law that has an inverse is replaced by its tangent at the
 * flow that the first solve gave it: one step of the method that iterates on flows, whose laws, of exponents
 * from 1 to 2, suit Newton far better near zero than their inverses do. That step is bent to follow the laws, like
 * those of the iteration. Zero where the chords are singular.
 */
export function findStart(kernel: Kernel): void {
  const { zoneCount, pressure, step, residual, matrix, groups, tally, chords } = kernel;
  if (chords.state === 'unknown') factorizeChords(kernel);
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = 0;
  if (chords.state === 'singular') return;
  addChordsAtZero(kernel);
  solveFactorized(chords.matrix, step);
  addToPressures(kernel, step);

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
  addToPressures(kernel, step);
  bendFromTangents(kernel);
  solveFactorized(matrix, step);
  addToPressures(kernel, step);
}

/** Adds a step to the pressures; where one is then no number, all are zero. */
function addToPressures({ zoneCount, pressure }: Kernel, step: Float64Array): void {
  let finite = true;
  for (let zone = 0; zone < zoneCount; zone++) {
    pressure[zone] = pressure[zone]! + step[zone]!;
    // Written so that a NaN is found too.
    if (!(Math.abs(pressure[zone]!) < Infinity)) finite = false;
  }
  if (!finite) for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = 0;
}

/** What the tangents leave out of the flows at the pressures found, with the sign of −F, by zone in `kernel.step`. */
function bendFromTangents(kernel: Kernel): void {
  const { zoneCount, groups, pressure, step, tally } = kernel;
  const { pressurePa, from, to, drivePa, state } = tally;
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  for (let zone = 0; zone < zoneCount; zone++) {
    pressurePa[zone] = pressure[zone]!;
    step[zone] = 0;
  }
  for (let g = 0; g < groups.length; g++) {
    const { zoneEnd, begin, interior, end, constant } = groups[g]!;
    if (constant) continue;
    let link = begin;
    for (let zone = 0; link < interior; zone++) {
      const zoneLast = zoneEnd[zone]!;
      const here = pressurePa[zone]!;
      let sum = 0;
      for (; link < zoneLast; link++) {
        const x = pressureDifferencePa[link]!;
        const change = here + drivePa[link]! - x;
        sum += bendOf(x, change, massFlowKgPerS[link]!, slopeKgPerSPa[link]!);
      }
      step[zone] = step[zone]! + sum;
    }
    for (; link < end; link++) {
      const start = from[link]!;
      const other = to[link]!;
      const x = pressureDifferencePa[link]!;
      const change = pressurePa[start]! - pressurePa[other]! + drivePa[link]! - x;
      const flow = bendOf(x, change, massFlowKgPerS[link]!, slopeKgPerSPa[link]!);
      step[start] = step[start]! + flow;
      step[other] = step[other]! - flow;
    }
  }
  // The place of the boundaries holds no step.
  step[zoneCount] = 0;
}

/** Less the flows of all chords with no pressure in the zones, by zone in `kernel.step`. */
function addChordsAtZero({ zoneCount, groups, step, constantResidual, tally }: Kernel): void {
  const { from, to, drivePa, chordFlow, chordSlope } = tally;
  for (let zone = 0; zone < zoneCount; zone++) step[zone] = -constantResidual[zone]!;
  for (let g = 0; g < groups.length; g++) {
    const { zoneEnd, begin, interior, end, constant } = groups[g]!;
    if (constant) continue;
    let link = begin;
    for (let zone = 0; link < interior; zone++) {
      const zoneLast = zoneEnd[zone]!;
      let flows = 0;
      for (; link < zoneLast; link++)
        flows += chordFlow[link]! + chordSlope[link]! * drivePa[link]!;
      step[zone] = step[zone]! - flows;
    }
    for (; link < end; link++) {
      const start = from[link]!;
      const other = to[link]!;
      const flow = chordFlow[link]! + chordSlope[link]! * drivePa[link]!;
      step[start] = step[start]! - flow;
      step[other] = step[other]! + flow;
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

/**
 * The tangents of a group at the flows of its chords, whose flow, pressure difference and slope stay in the state.
 * A law without an inverse is its chord, and left with no flow, so that nothing is bent.
 */
function startByBlock(kernel: Kernel, group: KernelGroup): void {
  const { pressurePa, residual, slopeSum, from, to, drivePa, chordFlow, chordSlope } = kernel.tally;
  const { state } = kernel.tally;
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const { begin, end, law } = group;
  readDifferences(kernel, group);
  for (let link = begin; link < end; link++) {
    massFlowKgPerS[link] = chordFlow[link]! + chordSlope[link]! * pressureDifferencePa[link]!;
    slopeKgPerSPa[link] = chordSlope[link]!;
  }
  law.inverseBlock?.(group, state);
  for (let link = begin; link < end; link++) {
    const start = from[link]!;
    const other = to[link]!;
    const slope = slopeKgPerSPa[link]!;
    const x = pressurePa[start]! - pressurePa[other]! + drivePa[link]!;
    const flow = massFlowKgPerS[link]! + slope * (x - pressureDifferencePa[link]!);
    residual[start] = residual[start]! + flow;
    slopeSum[start] = slopeSum[start]! + slope;
    residual[other] = residual[other]! - flow;
    slopeSum[other] = slopeSum[other]! + slope;
    if (law.inverseBlock === undefined) massFlowKgPerS[link] = 0;
  }
}
