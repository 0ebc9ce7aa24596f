import type { Kernel, KernelGroup } from './kernel.js';

/**
 * Flow and slope of every active link, and residual, through-flow and sum of slopes of every zone, at the given
 * pressures. Laws that have a loop of their own for it add to the zones themselves.
 */
export function sweepLinks(kernel: Kernel, pressure: Float64Array): void {
  clearSums(kernel, pressure);
  const { groups, tally } = kernel;
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!;
    if (group.begin === group.end || group.constant) continue;
    if (group.tallyBlock === undefined) sweepByBlock(kernel, group);
    else group.tallyBlock(group, tally);
  }
}

/** Takes over the pressures of the zones, and sets their sums to those of the constant laws. */
export function clearSums(kernel: Kernel, pressure: Float64Array): void {
  const { zoneCount, trial, residual, through, slopeSum } = kernel;
  const { constantResidual, constantThrough } = kernel;
  for (let zone = 0; zone < zoneCount; zone++) {
    trial[zone] = pressure[zone]!;
    residual[zone] = constantResidual[zone]!;
    through[zone] = constantThrough[zone]!;
    slopeSum[zone] = 0;
  }
}

/** Evaluates the constant laws and sums them for the zones. */
export function sumConstants(kernel: Kernel): void {
  const { groups, tally, constantResidual, constantThrough } = kernel;
  constantResidual.fill(0);
  constantThrough.fill(0);
  for (const group of groups) {
    if (!group.constant) continue;
    group.law.block(group, tally.state);
    for (let link = group.begin; link < group.end; link++) {
      const flow = tally.state.massFlowKgPerS[link]!;
      const [from, to] = [tally.from[link]!, tally.to[link]!];
      constantResidual[from]! += flow;
      constantResidual[to]! -= flow;
      constantThrough[from]! += Math.abs(flow);
      constantThrough[to]! += Math.abs(flow);
    }
  }
}

/** A group whose law has no loop of its own for this: differences, the block, and the addition to the zones. */
function sweepByBlock(kernel: Kernel, group: KernelGroup): void {
  readDifferences(kernel, group);
  group.law.block(group, kernel.tally.state);
  addToZones(kernel, group);
}

/** Pressure differences of a group's links. */
export function readDifferences({ tally }: Kernel, { begin, end }: KernelGroup): void {
  const { pressurePa, from, to, drivePa, state } = tally;
  const { pressureDifferencePa } = state;
  for (let link = begin; link < end; link++) {
    pressureDifferencePa[link] = pressurePa[from[link]!]! - pressurePa[to[link]!]! + drivePa[link]!;
  }
}

/** Adds flows and slopes of a group's links to the sums of their zones. */
export function addToZones({ tally }: Kernel, { begin, end }: KernelGroup): void {
  const { residual, through, slopeSum, from, to, state } = tally;
  const { massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin; link < end; link++) {
    const start = from[link]!;
    const other = to[link]!;
    const flow = massFlowKgPerS[link]!;
    const size = Math.abs(flow);
    const slope = slopeKgPerSPa[link]!;
    residual[start] = residual[start]! + flow;
    through[start] = through[start]! + size;
    slopeSum[start] = slopeSum[start]! + slope;
    residual[other] = residual[other]! - flow;
    through[other] = through[other]! + size;
    slopeSum[other] = slopeSum[other]! + slope;
  }
}

/** The matrix d residual / d pressure from the slopes of the last sweep. */
export function fillMatrix(kernel: Kernel): void {
  const { zoneCount, slopeSum, matrix, interiorCount, interiorLink, interiorSlot } = kernel;
  const { slopeKgPerSPa } = kernel.tally.state;
  const { diagonal, entries } = matrix;
  for (let zone = 0; zone < zoneCount; zone++) diagonal[zone] = slopeSum[zone]!;
  entries.fill(0);
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
  const { zoneCount, activeCount, activeLink, activeFrom, activeTo, rounding } = kernel;
  const { pressure: given, drivePa } = kernel;
  const { massFlowKgPerS, slopeKgPerSPa } = kernel.tally.state;
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
