import type { Kernel, KernelGroup, Laggards } from './kernel.js';
import { residualExcess, yardstickFloor } from './stop-test.js';
import { sweepLinks } from './sweep.js';

/** In a network of fewer zones a step costs less than looking for laggards. */
const fewestZones = 64;
/** Zones lag behind whose residual is more than this part of the greatest, each in units of the flow through it. */
const laggingPart = 0.03;
/** They are balanced to this part of that. */
const balancedPart = 0.1;
/** More than one zone in so many is no minority: a step of all zones serves them better. */
const laggingShare = 16;
/** Zones are balanced, again and again, at most one for so many of the network. */
const visitShare = 5;
/** Zones with more links are left out. */
const mostLinks = 32;
const mostTrials = 30;
/** Steps of a solve after which laggards are looked for. */
const lastStep = 10;

/** What balancing laggards needs; undefined for a small network, which does without. */
export function createLaggards(
  zoneCount: number,
  groups: readonly KernelGroup[],
): Laggards | undefined {
  if (zoneCount < fewestZones) return undefined;
  return {
    queue: new Int32Array(zoneCount),
    queued: new Uint8Array(zoneCount),
    parts: groups.map(({ law, recordLength }) => ({
      law,
      records: new Float64Array(mostLinks * recordLength),
      recordLength,
      begin: 0,
      end: 0,
    })),
    state: {
      pressureDifferencePa: new Float64Array(mostLinks),
      massFlowKgPerS: new Float64Array(mostLinks),
      slopeKgPerSPa: new Float64Array(mostLinks),
    },
    sign: new Float64Array(mostLinks),
    drivePa: new Float64Array(mostLinks),
    before: new Float64Array(mostLinks),
    other: new Int32Array(mostLinks),
  };
}

/**
 * Balances, one by one, the few zones of a large network that lag behind after a step, at `kernel.trial`, where laws
 * and residuals have just been evaluated; does so anew at the end.
 *
 * After two or three steps hundreds of zones are balanced to a millionth but for some at the end of a door that
 * should carry next to nothing: a law of exponent ½ holds the tangent there for a step or two. The larger the network,
 * the more of these there are, and each new step for them costs a matrix. To move the pressure of one zone to where
 * its own air balances is to minimise the potential along one axis, and takes a few evaluations of its own links
 * (nonlinear Gauss–Seidel: Ortega and Rheinboldt, Iterative Solution of Nonlinear Equations in Several Variables,
 * 1970, from memory). It moves the residual on to its neighbours, diluted, and these follow in turn.
 */
export function balanceLaggards(kernel: Kernel, laggards: Laggards, tolerance: number): void {
  const { zoneCount, residual, through, trial, iteration } = kernel;
  if (iteration.iterations > lastStep) return;
  // Half the tolerance times the excess is the greatest residual, in units of the flow through its zone.
  const lagging = Math.max(laggingPart * iteration.excess, 1) * 0.5 * tolerance;
  const floor = yardstickFloor(kernel);
  const { queue, queued } = laggards;
  const most = Math.floor(zoneCount / laggingShare);
  const lags = (zone: number): boolean =>
    Math.abs(residual[zone]!) > lagging * Math.max(through[zone]!, floor);
  let waiting = 0;
  for (let zone = 0; zone < zoneCount; zone++) {
    if (!lags(zone)) continue;
    if (waiting === most) return;
    queue[waiting++] = zone;
  }
  for (let k = 0; k < waiting; k++) queued[queue[k]!] = 1;
  let head = 0;
  for (let visits = Math.floor(zoneCount / visitShare); waiting > 0; waiting--) {
    const zone = queue[head]!;
    head = head + 1 === zoneCount ? 0 : head + 1;
    queued[zone] = 0;
    if (visits === 0 || !lags(zone)) continue;
    visits--;
    const links = gatherLinks(kernel, laggards, zone);
    const enough = balancedPart * lagging * Math.max(through[zone]!, floor);
    if (links > 0) balanceZone(kernel, laggards, { zone, links, enough });
    for (let k = 0; k < links; k++) {
      const other = laggards.other[k]!;
      if (other === zoneCount || queued[other] === 1 || !lags(other)) continue;
      queued[other] = 1;
      const tail = head + waiting - 1;
      queue[tail < zoneCount ? tail : tail - zoneCount] = other;
      waiting++;
    }
  }
  // Anew, though all flows are known: rounding must be that of a sweep, or the search along the next step may stall.
  sweepLinks(kernel, trial);
  iteration.lawSweeps++;
  iteration.excess = residualExcess(kernel, tolerance);
  iteration.leastExcess = Math.min(iteration.leastExcess, iteration.excess);
}

/**
 * Lays out the links of a zone, group by group.
 *
 * @returns how many there are; 0 where they are too many
 */
function gatherLinks({ links, trial, groups }: Kernel, laggards: Laggards, zone: number): number {
  const { parts, sign, drivePa, other } = laggards;
  const { from, to, zoneEnd, zoneLink } = links;
  let next = zone === 0 ? 0 : zoneEnd[zone - 1]!;
  const end = zoneEnd[zone]!;
  if (end - next > mostLinks) return 0;
  let count = 0;
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!;
    const part = parts[g]!;
    const { recordLength } = part;
    part.begin = count;
    for (; next < end && zoneLink[next]! >> 1 < group.end; next++) {
      // Its flow stays what it is.
      if (group.constant) continue;
      const place = zoneLink[next]! >> 1;
      const leaves = (zoneLink[next]! & 1) === 0;
      const beyond = leaves ? to[place]! : from[place]!;
      sign[count] = leaves ? 1 : -1;
      other[count] = beyond;
      drivePa[count] = links.drivePa[place]! - sign[count]! * trial[beyond]!;
      const record = (place - group.begin) * recordLength;
      const into = (count - part.begin) * recordLength;
      for (let k = 0; k < recordLength; k++) part.records[into + k] = group.records[record + k]!;
      count++;
    }
    part.end = count;
  }
  return count;
}

/** Moves the pressure of a zone to where its residual is small enough, by Newton steps within a bracket. */
function balanceZone(
  { trial, residual, zoneCount }: Kernel,
  laggards: Laggards,
  {
    zone,
    links,
    enough,
  }: { readonly zone: number; readonly links: number; readonly enough: number },
): void {
  const { parts, state, sign, drivePa, before, other } = laggards;
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const start = residual[zone]!;
  let pressure = trial[zone]!;
  let low = -Infinity;
  let high = Infinity;
  for (let trials = 0; trials <= mostTrials; trials++) {
    for (let k = 0; k < links; k++) pressureDifferencePa[k] = drivePa[k]! + sign[k]! * pressure;
    for (let g = 0; g < parts.length; g++) {
      const part = parts[g]!;
      if (part.begin < part.end) part.law.block(part, state);
    }
    if (trials === 0) before.set(massFlowKgPerS);
    let sum = start;
    let slope = 0;
    for (let k = 0; k < links; k++) {
      sum += sign[k]! * (massFlowKgPerS[k]! - before[k]!);
      slope += slopeKgPerSPa[k]!;
    }
    residual[zone] = sum;
    trial[zone] = pressure;
    if (!(Math.abs(sum) > enough) || trials === mostTrials) break;
    if (sum > 0) high = pressure;
    else low = pressure;
    let next = pressure - sum / slope;
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    if (!(Math.abs(next) < Infinity)) break;
    pressure = next;
  }
  for (let k = 0; k < links; k++) {
    if (other[k] === zoneCount) continue;
    const more = sign[k]! * (massFlowKgPerS[k]! - before[k]!);
    residual[other[k]!] = residual[other[k]!]! - more;
  }
}
