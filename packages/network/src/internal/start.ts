import type { Kernel, KernelGroup } from './kernel.js';
import { fillMatrix } from './sweep.js';
import { factorize } from './zone-matrix.js';

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
  const { zoneCount, pressure, trial, step, bend, matrix, chords, loops, address } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = trial[zone] = 0;
  loops.chords(address);
  loops.sums(address);
  if (chords.state === 'unknown') {
    fillMatrix(kernel, chords.matrix);
    chords.state = factorize(chords.matrix) ? 'factorized' : 'singular';
  }
  if (chords.state === 'singular') return;
  loops.residualStep(address, chords.matrix.address);
  addToPressures(kernel, step);

  loops.chords(address);
  for (let g = 0; g < kernel.groups.length; g++) takeTangents(kernel, kernel.groups[g]!);
  if (loops.tangentStep(address, matrix.address) === 0) return;
  addToPressures(kernel, step);

  for (let g = 0; g < kernel.groups.length; g++) straighten(kernel, kernel.groups[g]!);
  loops.bendOfTrial(address, matrix.address);
  addToPressures(kernel, bend);
}

/** Adds a step to the pressures; where one is then no number, all are zero. */
function addToPressures({ zoneCount, pressure, trial }: Kernel, step: Float64Array): void {
  let finite = true;
  for (let zone = 0; zone < zoneCount; zone++) {
    const moved = pressure[zone]! + step[zone]!;
    pressure[zone] = trial[zone] = moved;
    // Written so that a NaN is found too.
    if (!(Math.abs(moved) < Infinity)) finite = false;
  }
  if (!finite) for (let zone = 0; zone < zoneCount; zone++) pressure[zone] = trial[zone] = 0;
}

/** Pressure differences and slopes of a group's laws at the flows of their chords; a law without an inverse keeps its chord. */
function takeTangents({ loops, address, links }: Kernel, group: KernelGroup): void {
  if (group.begin === group.end || !group.inverts) return;
  if (group.compiled) loops.powerLawInverse(address, group.address, group.begin, group.end);
  else group.law.inverseBlock?.(group, links.state);
}

/** Leaves a law without an inverse with no flow, so that nothing is bent. */
function straighten({ links }: Kernel, { inverts, constant, begin, end }: KernelGroup): void {
  if (inverts || constant) return;
  links.state.massFlowKgPerS.fill(0, begin, end);
}
