import type { FanPoint } from './fan-point.js';
import { fanRise, type FanInterpolation } from './fan-rise.js';

/** A fan and what it blows against. */
export interface FanAndSystem {
  /** Curve of the fan, rising parts included, in any order. */
  readonly points: readonly FanPoint[];
  /** How the curve runs between its points; monotone cubic where absent. */
  readonly interpolation?: FanInterpolation;
  /** Pressure that the system takes at a volume flow [Pa]; the suction of the house included. */
  readonly systemLossPa: (volumeFlowM3PerS: number) => number;
}

/** A flow at which fan and system agree. */
export interface OperatingPoint extends FanPoint {
  /** After a small disturbance the fan comes back to this point rather than leaving it. */
  readonly stable: boolean;
}

const stepsBetweenPoints = 64;
const mostHalvings = 100;

/**
 * All flows at which a fan's rise equals what the system takes, in rising order.
 *
 * Each stretch between two points of the curve is looked at in 64 steps: two crossings within one step are
 * missed. A fan with a rising part (stall) can have three, of which the middle one is unstable.
 *
 * @param pair - the fan's points and the system's loss
 * @returns the crossings; none where the system takes more than the fan gives everywhere, or less
 */
export function operatingPoints(pair: FanAndSystem): readonly OperatingPoint[] {
  const rise = fanRise(pair.points, pair.interpolation);
  const excess = (flow: number): number => rise(flow) - pair.systemLossPa(flow);
  const flows = [...pair.points].map((point) => point.volumeFlowM3PerS).sort((a, b) => a - b);
  const found: OperatingPoint[] = [];
  const add = (flow: number, stable: boolean): void => {
    found.push({ volumeFlowM3PerS: flow, pressureRisePa: rise(flow), stable });
  };
  let low = flows[0]!;
  let lowExcess = excess(low);
  if (lowExcess === 0) add(low, excess(low + 1e-6 * (flows[1]! - low)) < 0);
  for (const [k, start] of flows.slice(0, -1).entries()) {
    for (let step = 1; step <= stepsBetweenPoints; step++) {
      const end = flows[k + 1]!;
      // The last step ends on the point itself, not a rounding beside it.
      const share = step / stepsBetweenPoints;
      const high = step === stepsBetweenPoints ? end : start + share * (end - start);
      const highExcess = excess(high);
      if (lowExcess !== 0 && lowExcess * highExcess <= 0) {
        add(crossing(excess, low, high), lowExcess > 0);
      }
      low = high;
      lowExcess = highExcess;
    }
  }
  return found;
}

/** Halves until the ends touch. */
function crossing(excess: (flow: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const sign = Math.sign(excess(low));
  for (let halving = 0; halving < mostHalvings; halving++) {
    const middle = 0.5 * (low + high);
    if (middle <= low || middle >= high) break;
    if (Math.sign(excess(middle)) === sign) low = middle;
    else high = middle;
  }
  return high;
}
