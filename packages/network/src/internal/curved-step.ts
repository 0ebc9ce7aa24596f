import type { Kernel, KernelGroup } from './kernel.js';
import { solveFactorized } from './zone-matrix.js';

/** Least part that the bent step keeps of the slope of the potential along the straight one. */
const leastDescent = 0.3;
/** A link is bent only while 1 − n is less than this. */
const mostBent = 0.6;

/**
 * Bends the Newton step in `kernel.step` to follow the curves of the laws, without evaluating any.
 *
 * Near (x, m) a law whose slope is g goes like m (1 + r)^n with r = dx/x and n = g x/m, its own local exponent; a
 * power law does so exactly. Taken as (1 + ½(1+n) r)/(1 + ½(1−n) r), which has the right first two terms and is right
 * again at r = −2, where x has become −x, it differs from the tangent by −½ g (1−n) dx²/(x + ½(1−n) dx). The step
 * that balances these differences, by the factor at hand, is added: convergence is of third order, and a house takes
 * one sweep less. Laws that do not bend like a power are taken as straight.
 */
export function bendStep(kernel: Kernel): void {
  const { zoneCount, groups, step, residual, bend, matrix } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) bend[zone] = 0;
  for (let g = 0; g < groups.length; g++) {
    if (!groups[g]!.constant) addBends(kernel, groups[g]!);
  }
  solveFactorized(matrix, bend);
  let straight = 0;
  let bent = 0;
  for (let zone = 0; zone < zoneCount; zone++) {
    straight += residual[zone]! * step[zone]!;
    bent += residual[zone]! * (step[zone]! + bend[zone]!);
  }
  if (!(bent <= leastDescent * straight)) return;
  for (let zone = 0; zone < zoneCount; zone++) step[zone] = step[zone]! + bend[zone]!;
}

/** What the tangents of a group's links leave out of the flows after the step, with the sign of −F, added to the zones. */
function addBends({ step, bend, tally }: Kernel, group: KernelGroup): void {
  const { pressurePa, from, to, drivePa, state } = tally;
  const { massFlowKgPerS, slopeKgPerSPa } = state;
  const { zoneEnd, interior, end } = group;
  let link = group.begin;
  for (let zone = 0; link < interior; zone++) {
    const zoneLast = zoneEnd[zone]!;
    const here = pressurePa[zone]!;
    const change = step[zone]!;
    let sum = 0;
    for (; link < zoneLast; link++) {
      const x = here + drivePa[link]!;
      sum += bendOf(x, change, massFlowKgPerS[link]!, slopeKgPerSPa[link]!);
    }
    bend[zone] = bend[zone]! + sum;
  }
  for (; link < end; link++) {
    const start = from[link]!;
    const other = to[link]!;
    const x = pressurePa[start]! - pressurePa[other]! + drivePa[link]!;
    const change = step[start]! - step[other]!;
    const flow = bendOf(x, change, massFlowKgPerS[link]!, slopeKgPerSPa[link]!);
    bend[start] = bend[start]! + flow;
    bend[other] = bend[other]! - flow;
  }
}

/**
 * ½ g (1−n) dx²/(x + ½(1−n) dx), with n = g x/m brought over one denominator; 0 for a law taken as straight, and where
 * the pressure difference comes to lie beyond its mirror image. It is never more than 1.5 g |dx|.
 */
// eslint-disable-next-line max-params -- inlined, once a link and step
export function bendOf(x: number, change: number, flow: number, slope: number): number {
  const left = flow - slope * x;
  const part = left * flow;
  if (part > 0 && part < mostBent * flow * flow && change * x > -2 * x * x) {
    return (slope * left * change * change) / (2 * flow * x + left * change);
  }
  return 0;
}
