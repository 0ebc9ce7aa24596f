import type { Kernel } from './kernel.js';
import { residualExcess } from './stop-test.js';
import { evaluateLaws, gatherRounding } from './sweep.js';

/** A slope of at most this part of the slope at the start is small. */
const small = 0.3;
/** After so many trials any falling slope will do. */
const pickyTrials = 10;
const mostTrials = 60;
/** Each trial divides what is left of the step, at worst, in this ratio. */
const leastPart = 0.1;
/** A step of at most this part of a pressure, or of a pascal, is next to nothing. */
const tiny = 1e-9;

/**
 * Looks along `kernel.step` from `kernel.pressure` for a point worth going to, and leaves it in `kernel.trial`
 * with its laws and residuals evaluated.
 *
 * The slope of the potential along the step, psi(t) = F(p + t d) · d, starts negative and only rises, so the
 * best point is where it is zero. The full step is tried first; then t narrows between a falling and a rising
 * slope (regula falsi, the stale end halved). A point is taken
 *   (a) where psi ≤ 0: the potential has fallen all the way there. After a narrowing it must also be small,
 *       or the tenth trial past; or
 *   (b) where psi is small and positive, and the excess is at most half the least so far; or
 *   (c) likewise on credit, or where psi is lost in rounding at the end of a full, tiny step, twenty times a solve at
 *       most; or
 *   (d) where the stop test holds.
 *
 * @returns false when no point was found
 */
export function searchAlongStep(kernel: Kernel, tolerance: number): boolean {
  const { iteration, loops, address, stepAddress } = kernel;
  const start = loops.slopeAlong(address, stepAddress);
  let t = 1;
  let low = 0;
  let slopeLow = start;
  let high = 0;
  let slopeHigh = 0;
  let roseLast = false;
  for (let trials = 1; trials <= mostTrials; trials++) {
    loops.goAlong(address, t);
    evaluateLaws(kernel);
    iteration.lawSweeps++;
    const slope = loops.slopeAlong(address, stepAddress);
    const excess = residualExcess(kernel, tolerance);
    iteration.excess = excess;
    const least = iteration.leastExcess;
    if (excess < least) iteration.leastExcess = excess;

    if (excess <= 1) return true;
    if (slope <= 0) {
      if (high === 0 || slope >= small * start || trials > pickyTrials) return true;
      if (low > 0 && !roseLast) slopeHigh *= 0.5;
      low = t;
      slopeLow = slope;
      roseLast = false;
    } else {
      if (slope <= -small * start) {
        if (excess <= 0.5 * least) return true;
        if (iteration.credit > 0) {
          iteration.credit--;
          return true;
        }
      }
      if (trials === 1 && iteration.credit > 0 && isLostInRounding(kernel, slope)) {
        iteration.credit--;
        return true;
      }
      if (high > 0 && roseLast) slopeLow *= 0.5;
      high = t;
      slopeHigh = slope;
      roseLast = true;
    }
    const part = slopeLow / (slopeLow - slopeHigh);
    t = low + (high - low) * Math.min(Math.max(part, leastPart), 1 - leastPart);
  }
  return false;
}

/** What rounding can do to the residuals explains this slope at the end of a step that is itself next to nothing. */
function isLostInRounding(kernel: Kernel, slope: number): boolean {
  const { zoneCount, pressure, step, trial, rounding } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) {
    if (Math.abs(step[zone]!) > tiny * (1 + Math.abs(pressure[zone]!))) return false;
  }
  gatherRounding(kernel, trial);
  let noise = 0;
  for (let zone = 0; zone < zoneCount; zone++) noise += rounding[zone]! * Math.abs(step[zone]!);
  return slope <= noise;
}
