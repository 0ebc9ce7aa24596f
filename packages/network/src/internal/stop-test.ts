import type { Kernel } from './kernel.js';
import { gatherRounding } from './sweep.js';

/** A zone's through-flow counts as at least this part of the greatest: a closet without flow is no yardstick. */
const leastThrough = 1e-6;

/**
 * The greatest residual of a zone over half the tolerance times the flow through it: the stop test holds at
 * 1 or less. Infinite where a residual is no number.
 */
export function residualExcess(kernel: Kernel, tolerance: number): number {
  return (2 * kernel.loops.greatestResidual(kernel.address, leastThrough)) / tolerance;
}

/** The least flow against which the residual of any zone is held [kg/s]. */
export function yardstickFloor({ loops, address }: Kernel): number {
  return leastThrough * loops.greatestThrough(address) + 1e-300;
}

/**
 * The flow against which the residual of a zone is reported: that through it, or where next to none flows as much
 * as the stop test puts in its place: its share of the greatest flow, or what makes rounding, which must have been
 * gathered, count as the tolerance [kg/s].
 */
export function residualYardsticks(
  { zoneCount, through, rounding, loops, address }: Kernel,
  tolerance: number,
): Float64Array {
  const floor = leastThrough * loops.greatestThrough(address);
  return Float64Array.from({ length: zoneCount }, (_, zone) =>
    Math.max(through[zone]!, floor, (2 * rounding[zone]!) / tolerance),
  );
}

/** Every residual is within the stop test's allowance plus what rounding at `kernel.trial` explains. */
export function withinRounding(kernel: Kernel, tolerance: number): boolean {
  const { zoneCount, residual, through, rounding } = kernel;
  gatherRounding(kernel, kernel.trial);
  const largest = kernel.loops.greatestThrough(kernel.address);
  for (let zone = 0; zone < zoneCount; zone++) {
    const yardstick = Math.max(through[zone]!, leastThrough * largest);
    const allowed = 0.5 * tolerance * yardstick + rounding[zone]!;
    if (!(Math.abs(residual[zone]!) <= allowed)) return false;
  }
  return true;
}
