import type { Kernel } from './kernel.js';
import { solveFactorized } from './skyline.js';

/** Least part that the bent step keeps of the slope of the potential along the straight one. */
const leastDescent = 0.3;
/** A link is bent only while its pressure difference keeps its sign by this part, or grows at most so many times. */
const mostShrunk = -0.9;
const mostGrown = 20;

/**
 * Bends the Newton step in `kernel.step` to follow the curves of the laws, without evaluating any.
 *
 * Near (x, m) a law whose slope is g goes like m (1 + r)^n with r = dx/x and n = g x/m, its own local exponent; a
 * power law does so exactly. Taken as (1 + ½(1+n) r)/(1 + ½(1−n) r), which has the right first two terms and
 * never leaves the right side, it differs from the tangent by −½ g (1−n) dx²/(x + ½(1−n) dx). The step that
 * balances these differences, by the factor at hand, is added: convergence is of third order, and a house takes one
 * sweep less. Laws that do not bend like a power are taken as straight.
 */
export function bendStep(kernel: Kernel): void {
  const { zoneCount, activeCount, step, residual, bend, matrix, tally } = kernel;
  const { rows, firstRow, secondRow, drivePa, state } = tally;
  const { massFlowKgPerS, slopeKgPerSPa } = state;
  // In the rows the sums of the last sweep make room for the step with both signs, and for what the bends add.
  for (let zone = 0, row = 0; zone < zoneCount; zone++, row += 8) {
    rows[row] = step[zone]!;
    rows[row + 1] = 0;
    rows[row + 4] = -step[zone]!;
    rows[row + 5] = 0;
  }
  rows[8 * zoneCount] = 0;
  for (let link = 0; link < activeCount; link++) {
    const first = firstRow[link]!;
    const second = secondRow[link]!;
    const x = rows[first + 3]! + rows[second + 3]! + drivePa[link]!;
    const change = rows[first]! + rows[second]!;
    const slope = slopeKgPerSPa[link]!;
    const halfBend = 0.5 - (0.5 * slope * x) / massFlowKgPerS[link]!;
    const grown = change * x;
    const square = x * x;
    if (
      halfBend > 0 &&
      halfBend < 0.3 &&
      grown > mostShrunk * square &&
      grown < mostGrown * square
    ) {
      const flow = (slope * halfBend * change * change) / (x + halfBend * change);
      rows[first + 1] = rows[first + 1]! + flow;
      rows[second + 1] = rows[second + 1]! + flow;
    }
  }
  for (let zone = 0, row = 0; zone < zoneCount; zone++, row += 8) {
    bend[zone] = rows[row + 1]! - rows[row + 5]!;
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
