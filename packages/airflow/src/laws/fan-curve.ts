import type { FanCurveDescription, FanPoint } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LawProblem, LinkState } from './flow-law.js';
import { fanSegments } from './internal/fan-segments.js';
import { rangeProblems } from './internal/range-problem.js';

/** Numbers ahead of the segments: density of the air that enters forward and backward. */
const header = 2;
/** Numbers a segment: its start on x = −rise, and the cubic of the volume flow from there. */
const segmentLength = 5;

/**
 * A fan that blows from → to by its characteristic [kg/s].
 * m = rho Q(rise), rise = −dP, Q interpolated monotonically between the points; rho at the inlet.
 * Beyond free delivery the last slope continues; beyond shut-off the flow is blocked at zero or the first
 * slope continues, as described.
 * Source of the interpolation: Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246, from memory.
 */
export const fanCurve: FlowLaw<FanCurveDescription> = {
  kind: 'fanCurve',
  equation: 'm = rho Q(rise), rise = -dP',
  validity:
    'for the speed and density at which the points were taken; a blocked fan has slope zero beyond shut-off, with a jump there; not zero at zero',
  check: fanCurveProblems,
  recordLength: (description) => header + segmentLength * fanSegments(description).length,
  prepare(description, { from, to, scale, records, at }) {
    records[at] = scale * from.densityKgPerM3;
    records[at + 1] = scale * to.densityKgPerM3;
    let next = at + header;
    for (const segment of fanSegments(description)) {
      records[next] = segment.startPa;
      records[next + 1] = segment.flow;
      records[next + 2] = segment.slope;
      records[next + 3] = segment.second;
      records[next + 4] = segment.third;
      next += segmentLength;
    }
  },
  block(group: LawGroup, state: LinkState): void {
    const { records, recordLength, begin, end } = group;
    for (let link = begin, at = 0; link < end; link++, at += recordLength) {
      const x = state.pressureDifferencePa[link]!;
      // The first segment reaches down to minus infinity, the last up to plus infinity.
      let segment = at + header;
      const last = at + recordLength - segmentLength;
      while (segment < last && records[segment + segmentLength]! <= x) segment += segmentLength;
      const t = x - records[segment]!;
      const slope = records[segment + 2]!;
      const second = records[segment + 3]!;
      const third = records[segment + 4]!;
      const volume = records[segment + 1]! + t * (slope + t * (second + t * third));
      const density = volume > 0 ? records[at]! : records[at + 1]!;
      state.massFlowKgPerS[link] = density * volume;
      state.slopeKgPerSPa[link] = density * Math.max(0, slope + t * (2 * second + 3 * t * third));
    }
  },
  reach(description, from, to) {
    const segments = fanSegments(description);
    const first = segments[0]!;
    const last = segments[segments.length - 1]!;
    const least = first.slope > 0 ? -Infinity : first.flow;
    const most = last.slope > 0 ? Infinity : last.flow;
    return {
      leastKgPerS: least * (least > 0 ? from : to).densityKgPerM3,
      mostKgPerS: most * (most > 0 ? from : to).densityKgPerM3,
      strict: segments.every((segment) => segment.rising),
    };
  },
};

function fanCurveProblems(description: FanCurveDescription): LawProblem[] {
  const points: readonly FanPoint[] = Array.isArray(description.points) ? description.points : [];
  if (points.length < 2) {
    return [
      {
        code: 'FanCurveTooShort',
        severity: 'error',
        field: 'points',
        found: points.length,
        allowed: 'two points or more',
      },
    ];
  }
  const problems = points.flatMap((point, index) => [
    ...rangeProblems({
      field: `points.${index}.pressureRisePa`,
      value: point?.pressureRisePa,
      least: -1e6,
      most: 1e6,
      unit: 'Pa',
    }),
    ...rangeProblems({
      field: `points.${index}.volumeFlowM3PerS`,
      value: point?.volumeFlowM3PerS,
      least: -1e5,
      most: 1e5,
      unit: 'm3/s',
    }),
  ]);
  if (problems.length > 0) return problems;

  const rising = risingPoint(points);
  if (rising !== undefined) {
    return [
      {
        code: 'RisingFanCurve',
        severity: description.risingPart === 'envelope' ? 'warning' : 'error',
        field: 'points',
        found: rising.volumeFlowM3PerS,
        allowed: 'a pressure rise that falls as the flow grows, or risingPart: envelope',
      },
    ];
  }
  const rises = points.map((point) => point.pressureRisePa).sort((a, b) => a - b);
  const shared = rises.find((rise, index) => index > 0 && rise - rises[index - 1]! < 1e-6);
  if (shared === undefined) return [];
  return [
    {
      code: 'FanPointsShareARise',
      severity: 'error',
      field: 'points',
      found: shared,
      allowed: 'pressure rises at least 1e-6 Pa apart',
    },
  ];
}

/** The first point, in order of flow, whose rise is above that of a smaller flow. */
function risingPoint(points: readonly FanPoint[]): FanPoint | undefined {
  const byFlow = [...points].sort((a, b) => a.volumeFlowM3PerS - b.volumeFlowM3PerS);
  return byFlow.find((point, index) =>
    byFlow.some(
      (smaller, before) =>
        before < index &&
        smaller.volumeFlowM3PerS < point.volumeFlowM3PerS &&
        smaller.pressureRisePa < point.pressureRisePa,
    ),
  );
}
