import { AirflowArgumentError } from '../airflow-argument-error.js';
import type { FanPoint } from './fan-point.js';

/** How a curve runs between its points. */
export type FanInterpolation = 'monotoneCubic' | 'linear';

/**
 * Pressure rise of a fan as a function of its flow, rising parts included.
 *
 * Between the points a cubic that rises and falls only where they do, or straight lines. The law of a fan
 * curve asks the other way round, flow from rise, which only a falling curve can answer.
 *
 * @param points - two points or more, each of its own flow, in any order
 * @param interpolation - monotone cubic where absent
 * @returns function from volume flow [m3/s] to pressure rise [Pa]; NaN outside the points
 *
 * Source: Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246, with harmonic means, from memory.
 */
export function fanRise(
  points: readonly FanPoint[],
  interpolation: FanInterpolation = 'monotoneCubic',
): (volumeFlowM3PerS: number) => number {
  const nodes = [...points].sort((a, b) => a.volumeFlowM3PerS - b.volumeFlowM3PerS);
  const secants = nodes.slice(1).map((node, k) => {
    const width = node.volumeFlowM3PerS - nodes[k]!.volumeFlowM3PerS;
    return (node.pressureRisePa - nodes[k]!.pressureRisePa) / width;
  });
  if (secants.length === 0 || !secants.every(Number.isFinite)) {
    throw new AirflowArgumentError(
      'points',
      points.length,
      'two finite points or more, flows apart',
    );
  }
  const slopes = nodes.map((_, k) => slopeBetween(secants[k - 1], secants[k]));
  return (flow) => {
    if (!(flow >= nodes[0]!.volumeFlowM3PerS)) return NaN;
    const k = nodes.slice(1).findIndex((node) => flow <= node.volumeFlowM3PerS);
    if (k < 0) return NaN;
    const start = nodes[k]!;
    const width = nodes[k + 1]!.volumeFlowM3PerS - start.volumeFlowM3PerS;
    const t = flow - start.volumeFlowM3PerS;
    const secant = secants[k]!;
    if (interpolation === 'linear') return start.pressureRisePa + t * secant;
    const [left, right] = [slopes[k]!, slopes[k + 1]!];
    const second = (3 * secant - 2 * left - right) / width;
    const third = (left + right - 2 * secant) / (width * width);
    return start.pressureRisePa + t * (left + t * (second + t * third));
  };
}

function slopeBetween(left: number | undefined, right: number | undefined): number {
  if (left === undefined) return right ?? 0;
  if (right === undefined) return left;
  return left * right > 0 ? (2 * left * right) / (left + right) : 0;
}
