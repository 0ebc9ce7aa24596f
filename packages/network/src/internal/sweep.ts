import type { Kernel } from './kernel.js';

/** Flow and slope of every active link at the given pressures. */
export function evaluateLaws(kernel: Kernel, pressure: Float64Array): void {
  const { activeCount, activeFrom, activeTo, activeDrivePa, groups, state } = kernel;
  const { pressureDifferencePa } = state;
  for (let link = 0; link < activeCount; link++) {
    pressureDifferencePa[link] =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + activeDrivePa[link]!;
  }
  for (const group of groups) {
    if (group.begin < group.end) group.law.block(group, state);
  }
}

/**
 * Residual, through-flow and sum of slopes of every zone from the links' flows and slopes.
 *
 * Link by link, boundaries collecting sums that nobody reads: one loop without a branch was faster than lists
 * by zone summed in registers, whose short loops the processor cannot foresee.
 */
export function gatherZones(kernel: Kernel): void {
  const { activeCount, activeFrom, activeTo, residual, through, slopeSum } = kernel;
  const { massFlowKgPerS, slopeKgPerSPa } = kernel.state;
  for (let node = 0; node < residual.length; node++) {
    residual[node] = 0;
    through[node] = 0;
    slopeSum[node] = 0;
  }
  for (let link = 0; link < activeCount; link++) {
    const from = activeFrom[link]!;
    const to = activeTo[link]!;
    const flow = massFlowKgPerS[link]!;
    const size = Math.abs(flow);
    const slope = slopeKgPerSPa[link]!;
    residual[from] = residual[from]! + flow;
    residual[to] = residual[to]! - flow;
    through[from] = through[from]! + size;
    through[to] = through[to]! + size;
    slopeSum[from] = slopeSum[from]! + slope;
    slopeSum[to] = slopeSum[to]! + slope;
  }
}

/** The matrix d residual / d pressure from the slopes, after `gatherZones`. */
export function fillMatrix(kernel: Kernel): void {
  const { zoneCount, slopeSum, matrix, interiorCount, interiorLink, interiorSlot } = kernel;
  const { slopeKgPerSPa } = kernel.state;
  const { diagonal, entries } = matrix;
  for (let zone = 0; zone < zoneCount; zone++) diagonal[zone] = slopeSum[zone]!;
  for (let slot = 0; slot < entries.length; slot++) entries[slot] = 0;
  for (let k = 0; k < interiorCount; k++) {
    const slot = interiorSlot[k]!;
    entries[slot] = entries[slot]! - slopeKgPerSPa[interiorLink[k]!]!;
  }
}

/**
 * What rounding can do to each residual: from the pressures in each link's difference, and from its law, whose
 * power is within 16 units of rounding.
 */
export function gatherRounding(kernel: Kernel, pressure: Float64Array): void {
  const { zoneCount, activeCount, activeFrom, activeTo, activeDrivePa, rounding } = kernel;
  const { massFlowKgPerS, slopeKgPerSPa } = kernel.state;
  rounding.fill(0);
  for (let link = 0; link < activeCount; link++) {
    const from = activeFrom[link]!;
    const to = activeTo[link]!;
    const size =
      Math.abs(pressure[from]!) + Math.abs(pressure[to]!) + Math.abs(activeDrivePa[link]!);
    const error =
      Number.EPSILON * (4 * slopeKgPerSPa[link]! * size + 16 * Math.abs(massFlowKgPerS[link]!));
    if (from < zoneCount) rounding[from] = rounding[from]! + error;
    if (to < zoneCount) rounding[to] = rounding[to]! + error;
  }
}
