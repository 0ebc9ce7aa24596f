import { at, integer, Network } from './network';

/** Pressure differences of all links at the trial pressures. */
export function differences(network: Network): void {
  const linkCount = network.linkCount;
  const difference = network.difference;
  for (let link: usize = 0; link < <usize>linkCount; link++) {
    store<f64>(at(difference, link), atTrial(network, link));
  }
}

/** Flows and slopes of the chords of all links at the trial pressures. */
export function chords(network: Network): void {
  const linkCount = network.linkCount;
  const difference = network.difference;
  const flow = network.flow;
  const slope = network.slope;
  const chordSlope = network.chordSlope;
  const chordFlow = network.chordFlow;
  for (let link: usize = 0; link < <usize>linkCount; link++) {
    const x = atTrial(network, link);
    const chord = load<f64>(at(chordSlope, link));
    store<f64>(at(difference, link), x);
    store<f64>(at(flow, link), load<f64>(at(chordFlow, link)) + chord * x);
    store<f64>(at(slope, link), chord);
  }
}

/** Flows of the tangents of all links at the trial pressures. */
export function tangents(network: Network): void {
  const linkCount = network.linkCount;
  const difference = network.difference;
  const flow = network.flow;
  const slope = network.slope;
  const other = network.other;
  for (let link: usize = 0; link < <usize>linkCount; link++) {
    const change = atTrial(network, link) - load<f64>(at(difference, link));
    const tangent = load<f64>(at(flow, link)) + load<f64>(at(slope, link)) * change;
    store<f64>(at(other, link), tangent);
  }
}

/** What the tangents of all links leave out of their flows at the trial pressures. */
export function bendsAtTrial(network: Network): void {
  const linkCount = network.linkCount;
  const difference = network.difference;
  const other = network.other;
  for (let link: usize = 0; link < <usize>linkCount; link++) {
    const change = atTrial(network, link) - load<f64>(at(difference, link));
    store<f64>(at(other, link), bend(network, link, change));
  }
}

/** What they leave out after the step. */
export function bendsAfterStep(network: Network): void {
  const linkCount = network.linkCount;
  const from = network.from;
  const to = network.to;
  const step = network.step;
  const other = network.other;
  for (let link: usize = 0; link < <usize>linkCount; link++) {
    const here = load<f64>(at(step, integer(from, link)));
    const there = load<f64>(at(step, integer(to, link)));
    store<f64>(at(other, link), bend(network, link, here - there));
  }
}

/** Pressure difference of a link at the trial pressures. */
function atTrial(network: Network, link: usize): f64 {
  const here = load<f64>(at(network.trial, integer(network.from, link)));
  const there = load<f64>(at(network.trial, integer(network.to, link)));
  return here - there + load<f64>(at(network.drive, link));
}

/** A link is bent only while 1 − n is less than this. */
const mostBent = 0.6;

/**
 * ½ g (1−n) dx²/(x + ½(1−n) dx), with n = g x/m brought over one denominator (`curved-step.ts` says why); 0 for a law
 * taken as straight, and where the pressure difference comes to lie beyond its mirror image. It is never more than
 * 1.5 g |dx|.
 */
function bend(network: Network, link: usize, dx: f64): f64 {
  const x = load<f64>(at(network.difference, link));
  const m = load<f64>(at(network.flow, link));
  const g = load<f64>(at(network.slope, link));
  const left = m - g * x;
  const part = left * m;
  const bent = part > 0.0 && part < mostBent * m * m && dx * x > -2.0 * x * x;
  return bent ? (g * left * dx * dx) / (2.0 * m * x + left * dx) : 0.0;
}
