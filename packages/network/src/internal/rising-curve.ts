import type { FanCurveDescription } from '@evendraft/airflow';

/** A fan's rise on its flow, where it may rise and fall. */
export interface RisingCurve {
  /** Flows at which the curve may change from rising to falling or back, in order, ends extended [m3/s]. */
  readonly breaks: readonly number[];
  /** Pressure rise at a flow [Pa]. */
  riseAt(flowM3PerS: number): number;
}

/**
 * The curve through a fan's points, in order of flow: straight lines, or cubics that do not overshoot. Beyond
 * both ends the last line continues, over the range of the points.
 * Source of the cubics: Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246, from memory.
 */
export function risingCurve({ points, interpolation }: FanCurveDescription): RisingCurve {
  const sorted = [...points].sort(
    (a, b) => a.volumeFlowM3PerS - b.volumeFlowM3PerS || b.pressureRisePa - a.pressureRisePa,
  );
  // Of points that share a flow the highest counts.
  const nodes = sorted.filter((n, k) => n.volumeFlowM3PerS !== sorted[k - 1]?.volumeFlowM3PerS);
  const flows = nodes.map((node) => node.volumeFlowM3PerS);
  const rises = nodes.map((node) => node.pressureRisePa);
  const last = flows.length - 1;
  const secants = flows.slice(1).map((flow, k) => (rises[k + 1]! - rises[k]!) / (flow - flows[k]!));
  const slopes = flows.map((_, k) => {
    const left = secants[k - 1] ?? secants[k]!;
    const right = secants[k] ?? secants[k - 1]!;
    return left * right > 0 ? (2 * left * right) / (left + right) : 0;
  });
  const range = flows[last]! - flows[0]!;
  return {
    breaks: [flows[0]! - range, ...flows, flows[last]! + range],
    riseAt(flow) {
      if (flow <= flows[0]!) return rises[0]! + secants[0]! * (flow - flows[0]!);
      if (flow >= flows[last]!) return rises[last]! + secants[last - 1]! * (flow - flows[last]!);
      let k = 0;
      while (flow > flows[k + 1]!) k++;
      const width = flows[k + 1]! - flows[k]!;
      const t = flow - flows[k]!;
      if (interpolation === 'linear') return rises[k]! + secants[k]! * t;
      const left = slopes[k]!;
      const right = slopes[k + 1]!;
      const second = (3 * secants[k]! - 2 * left - right) / width;
      const third = (left + right - 2 * secants[k]!) / width ** 2;
      return rises[k]! + t * (left + t * (second + t * third));
    },
  };
}
