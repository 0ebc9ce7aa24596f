import type { FanCurveDescription, FanPoint } from '../flow-law-description.js';

/** A cubic of the volume flow on x = −rise, from `startPa` up to the next segment. */
export interface FanSegment {
  readonly startPa: number;
  readonly flow: number;
  readonly slope: number;
  readonly second: number;
  readonly third: number;
  /** The flow grows strictly within the segment. */
  readonly rising: boolean;
}

interface Node {
  readonly x: number;
  readonly flow: number;
}

const known = new WeakMap<FanCurveDescription, readonly FanSegment[]>();

/**
 * The segments of a fan's characteristic on x = −rise, in rising order of x: one beyond shut-off, one
 * between neighbours, one beyond free delivery. The volume flow never falls along x.
 */
export function fanSegments(description: FanCurveDescription): readonly FanSegment[] {
  const before = known.get(description);
  if (before !== undefined) return before;
  const segments = computeSegments(description);
  known.set(description, segments);
  return segments;
}

function computeSegments(description: FanCurveDescription): FanSegment[] {
  const blocked = description.beyondShutOff === 'blocked';
  const nodes = blocked ? startAtZero(nodesOf(description)) : nodesOf(description);
  const secants = nodes.slice(1).map((node, k) => {
    const start = nodes[k]!;
    return (node.flow - start.flow) / (node.x - start.x);
  });
  const first = nodes[0]!;
  const last = nodes[nodes.length - 1]!;
  const linear = description.interpolation === 'linear';
  const slopes = nodes.map((_, k) => nodeSlope(secants[k - 1], secants[k]));

  const between = secants.map((secant, k): FanSegment => {
    const start = nodes[k]!;
    const width = nodes[k + 1]!.x - start.x;
    const left = linear ? secant : slopes[k]!;
    const right = linear ? secant : slopes[k + 1]!;
    return {
      startPa: start.x,
      flow: start.flow,
      slope: left,
      second: (3 * secant - 2 * left - right) / width,
      third: (left + right - 2 * secant) / (width * width),
      rising: secant > 0,
    };
  });
  return [
    straight(first, blocked ? 0 : secants[0]!),
    ...between,
    straight(last, secants[secants.length - 1]!),
  ];
}

/** Points on x = −rise in rising order, the upper monotone envelope where that was asked. */
function nodesOf({ points, risingPart }: FanCurveDescription): Node[] {
  const byFlow = [...points].sort(
    (a, b) => a.volumeFlowM3PerS - b.volumeFlowM3PerS || b.pressureRisePa - a.pressureRisePa,
  );
  const falling = risingPart === 'envelope' ? upperEnvelope(byFlow) : byFlow;
  return falling.map((point) => ({ x: -point.pressureRisePa, flow: point.volumeFlowM3PerS }));
}

/**
 * At each flow the greatest rise of any larger flow, tilted by a ten-thousandth of the greatest rise so that
 * the flow stays a function of the rise. It gives the largest flow at every rise: the greatest suction.
 */
function upperEnvelope(byFlow: readonly FanPoint[]): FanPoint[] {
  const tilt = 1e-4 * Math.max(1, ...byFlow.map((point) => Math.abs(point.pressureRisePa)));
  const envelope: FanPoint[] = [];
  let above = -Infinity;
  for (const point of [...byFlow].reverse()) {
    above = Math.max(point.pressureRisePa, above + tilt);
    envelope.unshift({ pressureRisePa: above, volumeFlowM3PerS: point.volumeFlowM3PerS });
  }
  return envelope;
}

/** The part of a curve with flow ≥ 0, beginning at zero flow. */
function startAtZero(nodes: readonly Node[]): Node[] {
  const positive = nodes.findIndex((node) => node.flow > 0);
  if (positive < 0)
    return [
      { x: nodes[0]!.x, flow: 0 },
      { x: nodes[0]!.x + 1, flow: 0 },
    ];
  const k = Math.max(positive, 1);
  const left = nodes[k - 1]!;
  const right = nodes[k]!;
  if (left.flow === 0) return nodes.slice(k - 1);
  const secant = (right.flow - left.flow) / (right.x - left.x);
  // A flat start cannot be continued to zero; a steep line within 1 Pa closes it.
  const reach = secant > 0 ? left.flow / secant : 1;
  const zero = { x: left.x - reach, flow: 0 };
  return [zero, ...nodes.slice(left.flow > 0 ? k - 1 : k)];
}

/** Slope at a point: the harmonic mean of its secants, so that no cubic overshoots; at an end its only secant. */
function nodeSlope(left: number | undefined, right: number | undefined): number {
  if (left === undefined) return right ?? 0;
  if (right === undefined) return left;
  return left > 0 && right > 0 ? (2 * left * right) / (left + right) : 0;
}

function straight(node: Node, slope: number): FanSegment {
  return {
    startPa: node.x,
    flow: node.flow,
    slope,
    second: 0,
    third: 0,
    rising: slope > 0,
  };
}
