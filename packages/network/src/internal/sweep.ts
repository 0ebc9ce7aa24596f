import type { Kernel, KernelGroup } from './kernel.js';

/**
 * Flow and slope of every active link, and residual, through-flow and sum of slopes of every zone, at the given
 * pressures. Laws add to the rows of their zones themselves where they can; why rows come in pairs is told at
 * `ZoneTally` of airflow.
 */
export function sweepLinks(kernel: Kernel, pressure: Float64Array): void {
  clearRows(kernel, pressure);
  const { groups, tally } = kernel;
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!;
    if (group.begin === group.end) continue;
    if (group.tallyBlock === undefined) sweepByBlock(kernel, group);
    else group.tallyBlock(group, tally);
  }
  gatherRows(kernel);
}

/** Every zone's pressure with both signs in its rows, and nothing in their sums. */
export function clearRows({ zoneCount, tally }: Kernel, pressure: Float64Array): void {
  const { rows } = tally;
  for (let zone = 0, row = 0; zone < zoneCount; zone++, row += 8) {
    const here = pressure[zone]!;
    rows[row] = 0;
    rows[row + 1] = 0;
    rows[row + 2] = 0;
    rows[row + 3] = here;
    rows[row + 4] = 0;
    rows[row + 5] = 0;
    rows[row + 6] = 0;
    rows[row + 7] = -here;
  }
}

/** Sums of every zone from its two rows. */
export function gatherRows({ zoneCount, tally, residual, through, slopeSum }: Kernel): void {
  const { rows } = tally;
  for (let zone = 0, row = 0; zone < zoneCount; zone++, row += 8) {
    residual[zone] = rows[row]! - rows[row + 4]!;
    through[zone] = rows[row + 1]! + rows[row + 5]!;
    slopeSum[zone] = rows[row + 2]! + rows[row + 6]!;
  }
}

/** A group whose law has no loop of its own for this: differences, the block, and the addition to the zones. */
function sweepByBlock(kernel: Kernel, group: KernelGroup): void {
  readDifferences(kernel, group);
  group.law.block(group, kernel.tally.state);
  addToRows(kernel, group);
}

/** Pressure differences of a group's links from the pressures in the rows. */
export function readDifferences({ tally }: Kernel, { begin, end }: KernelGroup): void {
  const { rows, firstRow, secondRow, drivePa, state } = tally;
  const { pressureDifferencePa } = state;
  // A boundary's row holds no pressure, so that one loop serves all links.
  for (let link = begin; link < end; link++) {
    pressureDifferencePa[link] =
      rows[firstRow[link]! + 3]! + rows[secondRow[link]! + 3]! + drivePa[link]!;
  }
}

/** Adds flows and slopes of a group's links to the rows of their zones. */
export function addToRows({ tally }: Kernel, { begin, end }: KernelGroup): void {
  const { rows, firstRow, secondRow, state } = tally;
  const { massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin; link < end; link++) {
    const first = firstRow[link]!;
    const second = secondRow[link]!;
    const flow = massFlowKgPerS[link]!;
    const size = Math.abs(flow);
    const slope = slopeKgPerSPa[link]!;
    rows[first] = rows[first]! + flow;
    rows[first + 1] = rows[first + 1]! + size;
    rows[first + 2] = rows[first + 2]! + slope;
    rows[second] = rows[second]! + flow;
    rows[second + 1] = rows[second + 1]! + size;
    rows[second + 2] = rows[second + 2]! + slope;
  }
}

/** The matrix d residual / d pressure from the slopes of the last sweep. */
export function fillMatrix(kernel: Kernel): void {
  const { zoneCount, slopeSum, matrix, interiorCount, interiorLink, interiorSlot } = kernel;
  const { slopeKgPerSPa } = kernel.tally.state;
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
