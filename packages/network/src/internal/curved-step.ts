import type { Kernel } from './kernel.js';

/** Least part that the bent step keeps of the slope of the potential along the straight one. */
const leastDescent = 0.3;

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
  const { zoneCount, step, bend, matrix, loops, address, stepAddress, bendAddress } = kernel;
  loops.bendOfStep(address, matrix.address);
  const straight = loops.slopeAlong(address, stepAddress);
  const bent = straight + loops.slopeAlong(address, bendAddress);
  if (!(bent <= leastDescent * straight)) return;
  for (let zone = 0; zone < zoneCount; zone++) step[zone] = step[zone]! + bend[zone]!;
}
