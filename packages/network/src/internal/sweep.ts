import type { Kernel } from './kernel.js';

/** Flow and slope of every active link at the given pressures. */
export function evaluateLaws(kernel: Kernel, pressure: Float64Array): void {
  findDifferences(kernel, pressure);
  for (const group of kernel.groups) {
    if (group.begin < group.end) group.law.block(group, kernel.state);
  }
}

/** Pressure difference of every active link at the given pressures. */
export function findDifferences(kernel: Kernel, pressure = kernel.pressure): void {
  const { activeCount, activeFrom, activeTo, activeDrivePa } = kernel;
  const { pressureDifferencePa } = kernel.state;
  for (let link = 0; link < activeCount; link++) {
    pressureDifferencePa[link] =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + activeDrivePa[link]!;
  }
}

/** Residual, through-flow and sum of slopes of every zone from the links' flows and slopes. */
export function gatherZones(kernel: Kernel): void {
  const { zoneCount, incidentStart, incident, residual, through, slopeSum } = kernel;
  const { massFlowKgPerS, slopeKgPerSPa } = kernel.state;
  let next = 0;
  for (let zone = 0; zone < zoneCount; zone++) {
    let net = 0;
    let sum = 0;
    let slope = 0;
    for (const end = incidentStart[2 * zone + 1]!; next < end; next++) {
      const link = incident[next]!;
      const flow = massFlowKgPerS[link]!;
      net += flow;
      sum += Math.abs(flow);
      slope += slopeKgPerSPa[link]!;
    }
    for (const end = incidentStart[2 * zone + 2]!; next < end; next++) {
      const link = incident[next]!;
      const flow = massFlowKgPerS[link]!;
      net -= flow;
      sum += Math.abs(flow);
      slope += slopeKgPerSPa[link]!;
    }
    residual[zone] = net;
    through[zone] = sum;
    slopeSum[zone] = slope;
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
