import type { Kernel, KernelGroup } from './kernel.js';
import type { ZoneMatrix } from './zone-matrix.js';

/**
 * Flow and slope of every active link, and residual, through-flow and sum of slopes of every zone, at the given
 * pressures. Flows that no pressure changes stand in their places.
 */
export function sweepLinks(kernel: Kernel, pressure: Float64Array): void {
  const { zoneCount, trial, loops, address } = kernel;
  if (pressure !== trial) {
    for (let zone = 0; zone < zoneCount; zone++) trial[zone] = pressure[zone]!;
  }
  loops.differences(address);
  evaluateLaws(kernel);
}

/** The same at the pressure differences at hand. */
export function evaluateLaws(kernel: Kernel): void {
  const { loops, address, groups } = kernel;
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!;
    if (group.begin < group.end && !group.constant) evaluate(kernel, group);
  }
  loops.sums(address);
}

/** The law of a group, at its pressure differences. */
export function evaluate({ loops, address, links }: Kernel, group: KernelGroup): void {
  if (group.compiled) loops.powerLaw(address, group.address, group.begin, group.end);
  else group.law.block(group, links.state);
}

/** The matrix d residual / d pressure from the slopes of the last sweep. */
export function fillMatrix({ loops, address }: Kernel, matrix: ZoneMatrix): void {
  loops.fill(address, matrix.address);
}

/**
 * What rounding can do to each residual: from the pressures in each link's difference, and from its law, whose
 * power is within 16 units of rounding.
 */
export function gatherRounding(kernel: Kernel, pressure: Float64Array): void {
  const { zoneCount, activeCount, activeLink, activeFrom, activeTo, rounding } = kernel;
  const { pressure: given, drivePa } = kernel;
  const { massFlowKgPerS, slopeKgPerSPa } = kernel.links.state;
  rounding.fill(0);
  for (let link = 0; link < activeCount; link++) {
    const from = activeFrom[link]!;
    const to = activeTo[link]!;
    // Boundaries are kept with the iterate only.
    const size =
      Math.abs(from < zoneCount ? pressure[from]! : given[from]!) +
      Math.abs(to < zoneCount ? pressure[to]! : given[to]!) +
      Math.abs(drivePa[activeLink[link]!]!);
    const error =
      Number.EPSILON * (4 * slopeKgPerSPa[link]! * size + 16 * Math.abs(massFlowKgPerS[link]!));
    if (from < zoneCount) rounding[from] = rounding[from]! + error;
    if (to < zoneCount) rounding[to] = rounding[to]! + error;
  }
}
