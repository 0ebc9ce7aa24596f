import { at, Network } from './network';
import { power, roughPower } from './power';

// A record of the power law: forward and backward coefficient, exponent n, width^(n−1).
const recordBytes = 32;
/** Within this of zero the law is a cubic [Pa]. */
const width = 1e-6;
/** Greatest slope over n C at which a start is made, as a power of two: near no flow the law is a line. */
const steepest: f64 = 10;

/**
 * Flows and slopes from pressure differences: `powerLaw.block` of @evendraft/airflow, bit for bit.
 *
 * @param records - address of the record of the first link
 * @param begin - place of the first link
 * @param end - place after the last
 */
export function powerLaw(network: Network, records: usize, begin: i32, end: i32): void {
  const difference = network.difference;
  const flow = network.flow;
  const slope = network.slope;
  for (let link = <usize>begin; link < <usize>end; link++, records += recordBytes) {
    const x = load<f64>(at(difference, link));
    const bits = reinterpret<u64>(x);
    // The sign bit picks the coefficient: a branch on the sign would be guessed wrong half the time.
    const coefficient = load<f64>(at(records, <usize>(bits >> 63)));
    const n = load<f64>(records, 16);
    const size = abs(x);
    if (size > width) {
      const chord = n == 0.5 ? coefficient / sqrt(size) : coefficient * power(bits, n - 1.0);
      store<f64>(at(flow, link), chord * x);
      store<f64>(at(slope, link), chord * n);
    } else {
      const atWidth = coefficient * load<f64>(records, 24);
      const s = x / width;
      store<f64>(at(flow, link), atWidth * (0.5 * (3.0 - n + (n - 1.0) * s * s)) * x);
      store<f64>(at(slope, link), atWidth * (0.5 * (3.0 - n + 3.0 * (n - 1.0) * s * s)));
    }
  }
}

/**
 * Pressure differences and slopes from flows, roughly, for the start: at the flow m the slope is
 * g = n C (|m|/C)^(1−1/n), and the pressure difference n m/g.
 */
export function powerLawInverse(network: Network, records: usize, begin: i32, end: i32): void {
  const difference = network.difference;
  const flow = network.flow;
  const slope = network.slope;
  for (let link = <usize>begin; link < <usize>end; link++, records += recordBytes) {
    const m = load<f64>(at(flow, link));
    const coefficient = load<f64>(at(records, <usize>(reinterpret<u64>(m) >> 63)));
    const n = load<f64>(records, 16);
    const chord = coefficient * roughPower(abs(m) / coefficient, 1.0 - 1.0 / n, steepest);
    store<f64>(at(difference, link), m / chord);
    store<f64>(at(slope, link), n * chord);
  }
}
