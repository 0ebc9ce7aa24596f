import { at, integer, Network } from './network';

/** Residual, through-flow and slopes of every zone from the flows and slopes of its links. */
export function sums(network: Network): void {
  const zoneCount = network.zoneCount;
  const zoneEnd = network.zoneEnd;
  const zoneLink = network.zoneLink;
  const flow = network.flow;
  const slope = network.slope;
  const residual = network.residual;
  const through = network.through;
  const slopeSum = network.slopeSum;
  let k: usize = 0;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    let out: f64 = 0;
    let sizes: f64 = 0;
    let slopes: f64 = 0;
    for (const end = <usize>integer(zoneEnd, zone); k < end; k++) {
      const turned = integer(zoneLink, k);
      const link = <usize>(turned >> 1);
      const m = load<f64>(at(flow, link));
      out += turned & 1 ? -m : m;
      sizes += abs(m);
      slopes += load<f64>(at(slope, link));
    }
    store<f64>(at(residual, zone), out);
    store<f64>(at(through, zone), sizes);
    store<f64>(at(slopeSum, zone), slopes);
  }
}

/** Residual and slopes of every zone from the flows of the tangents. */
export function tangentSums(network: Network): void {
  const zoneCount = network.zoneCount;
  const zoneEnd = network.zoneEnd;
  const zoneLink = network.zoneLink;
  const slope = network.slope;
  const other = network.other;
  const residual = network.residual;
  const slopeSum = network.slopeSum;
  let k: usize = 0;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    let out: f64 = 0;
    let slopes: f64 = 0;
    for (const end = <usize>integer(zoneEnd, zone); k < end; k++) {
      const turned = integer(zoneLink, k);
      const link = <usize>(turned >> 1);
      const m = load<f64>(at(other, link));
      out += turned & 1 ? -m : m;
      slopes += load<f64>(at(slope, link));
    }
    store<f64>(at(residual, zone), out);
    store<f64>(at(slopeSum, zone), slopes);
  }
}

/** What the bends leave at each zone, with the sign of −F. */
export function bendSums(network: Network): void {
  const zoneCount = network.zoneCount;
  const zoneEnd = network.zoneEnd;
  const zoneLink = network.zoneLink;
  const other = network.other;
  const bend = network.bend;
  let k: usize = 0;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    let sum: f64 = 0;
    for (const end = <usize>integer(zoneEnd, zone); k < end; k++) {
      const turned = integer(zoneLink, k);
      const m = load<f64>(at(other, <usize>(turned >> 1)));
      sum += turned & 1 ? -m : m;
    }
    store<f64>(at(bend, zone), sum);
  }
}

/** trial = pressure + t step. */
export function moveTrial(network: Network, t: f64): void {
  const zoneCount = network.zoneCount;
  const pressure = network.pressure;
  const trial = network.trial;
  const step = network.step;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    const moved = load<f64>(at(pressure, zone)) + t * load<f64>(at(step, zone));
    store<f64>(at(trial, zone), moved);
  }
}

/** step = −residual. */
export function takeResidual(network: Network): void {
  const zoneCount = network.zoneCount;
  const residual = network.residual;
  const step = network.step;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    store<f64>(at(step, zone), -load<f64>(at(residual, zone)));
  }
}

/** residual · vector. */
export function slopeAlong(network: Network, vector: usize): f64 {
  const zoneCount = network.zoneCount;
  const residual = network.residual;
  let sum: f64 = 0;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    sum += load<f64>(at(residual, zone)) * load<f64>(at(vector, zone));
  }
  return sum;
}

/** The greatest through-flow of a zone [kg/s]. */
export function greatestThrough(network: Network): f64 {
  const zoneCount = network.zoneCount;
  const through = network.through;
  let greatest: f64 = 0;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    const size = load<f64>(at(through, zone));
    if (size > greatest) greatest = size;
  }
  return greatest;
}

/**
 * The greatest residual of a zone over its through-flow, which counts as at least a part of the greatest; infinite where
 * one is no number.
 */
export function greatestResidual(network: Network, leastPart: f64): f64 {
  const zoneCount = network.zoneCount;
  const residual = network.residual;
  const through = network.through;
  const floor = leastPart * greatestThrough(network) + 1e-300;
  let greatest: f64 = 0;
  for (let zone: usize = 0; zone < <usize>zoneCount; zone++) {
    const size = load<f64>(at(through, zone));
    const part = abs(load<f64>(at(residual, zone))) / (size > floor ? size : floor);
    // Written so that a NaN counts as infinite.
    if (!(part <= greatest)) greatest = part <= Infinity ? part : Infinity;
  }
  return greatest;
}
