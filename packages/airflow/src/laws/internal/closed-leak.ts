import type { ClosedLeakage } from '../flow-law-description.js';
import type { LinkState, Preparation } from '../flow-law.js';
import { nearZeroWidthPa } from '../near-zero-width.js';
import { inletCoefficient } from './inlet-coefficient.js';
import { power } from './power.js';

/** Numbers in the record of a closed damper's leak: both coefficients, exponent, width^exponent. */
export const closedLeakLength = 4;

/** Writes the record of a closed damper's leak, so far into that of the damper; no flow where there is none. */
export function prepareClosedLeak(
  leak: ClosedLeakage | undefined,
  { from, to, scale, records, at: start }: Preparation,
  offset: number,
): void {
  const at = start + offset;
  records[at] = leak === undefined ? 0 : scale * inletCoefficient(leak, from);
  records[at + 1] = leak === undefined ? 0 : scale * inletCoefficient(leak, to);
  records[at + 2] = leak === undefined ? 1 : leak.exponent;
  records[at + 3] = nearZeroWidthPa ** records[at + 2]!;
}

/** Adds the flow of a closed damper's leak, and its slope, to those of the blade. */
// eslint-disable-next-line max-params -- runs for every damper of every sweep without allocating
export function addClosedLeak(
  records: Float64Array,
  at: number,
  { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa }: LinkState,
  link: number,
): void {
  const x = pressureDifferencePa[link]!;
  const leak = x > 0 ? records[at]! : records[at + 1]!;
  if (leak === 0) return;
  const n = records[at + 2]!;
  const size = Math.abs(x);
  let flow: number;
  let slope: number;
  if (size > nearZeroWidthPa) {
    const leakFlow = leak * power(size, n);
    flow = x > 0 ? leakFlow : -leakFlow;
    slope = (n * leakFlow) / size;
  } else {
    const s = x / nearZeroWidthPa;
    const flowAtWidth = 0.5 * leak * records[at + 3]!;
    flow = flowAtWidth * s * (3 - n + (n - 1) * s * s);
    slope = (flowAtWidth / nearZeroWidthPa) * (3 - n + 3 * (n - 1) * s * s);
  }
  massFlowKgPerS[link] = massFlowKgPerS[link]! + flow;
  slopeKgPerSPa[link] = slopeKgPerSPa[link]! + slope;
}
