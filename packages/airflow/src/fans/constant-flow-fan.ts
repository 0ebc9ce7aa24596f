import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requirePositive } from '../internal/require.js';
import type { FanCurveDescription } from '../laws/flow-law-description.js';
import { fanBySimilarity } from './fan-by-similarity.js';
import type { FanPoint } from './fan-point.js';
import { fanRise } from './fan-rise.js';

/** A fan whose speed is controlled so that it moves a set flow, as far as it can. */
export interface ConstantFlowFan {
  /** Flow that the control holds [m3/s]. */
  readonly setFlowM3PerS: number;
  /** Curve at full speed, falling, from shut-off on. */
  readonly fullSpeedPoints: readonly FanPoint[];
  /** Rise below which the control has no lower speed left; 0 where absent [Pa]. */
  readonly leastRisePa?: number;
  /** Above shut-off at full speed: a damper stops reverse flow, or the curve continues. */
  readonly beyondShutOff: FanCurveDescription['beyondShutOff'];
}

/** Flow by which the held flow still gives way over its whole range, so that it follows the rise [-]. */
const yielding = 1e-4;

/**
 * Curve of a fan under constant-flow control, with the limits of the control.
 *
 * From the rise that full speed gives at the set flow down to the least rise the flow is the set flow, but
 * for a ten-thousandth over that whole range. Above, the fan runs at full speed and follows its curve;
 * below, at its lowest speed, whose curve follows from the fan laws.
 *
 * @param fan - set flow, curve at full speed and lower limit
 * @returns the law of the controlled fan
 * @throws AirflowArgumentError when full speed does not reach the set flow above the least rise
 */
export function constantFlowFan(fan: ConstantFlowFan): FanCurveDescription {
  const { setFlowM3PerS, leastRisePa = 0, beyondShutOff } = fan;
  requirePositive('setFlowM3PerS', setFlowM3PerS);
  const full = [...fan.fullSpeedPoints].sort((a, b) => a.volumeFlowM3PerS - b.volumeFlowM3PerS);
  const mostRisePa = fanRise(full)(setFlowM3PerS);
  if (!(mostRisePa > leastRisePa)) {
    throw new AirflowArgumentError(
      'setFlowM3PerS',
      setFlowM3PerS,
      'a flow that full speed gives above the least rise',
    );
  }
  const lowest = lowestSpeedPoints(full, setFlowM3PerS, leastRisePa);
  const flowAtLeastRise = (1 + yielding) * setFlowM3PerS;
  return {
    kind: 'fanCurve',
    points: [
      ...full.filter(
        (point) => point.volumeFlowM3PerS < setFlowM3PerS && point.pressureRisePa > mostRisePa,
      ),
      { pressureRisePa: mostRisePa, volumeFlowM3PerS: setFlowM3PerS },
      { pressureRisePa: leastRisePa, volumeFlowM3PerS: flowAtLeastRise },
      ...lowest.filter(
        (point) => point.volumeFlowM3PerS > flowAtLeastRise && point.pressureRisePa < leastRisePa,
      ),
    ],
    beyondShutOff,
  };
}

/** The curve at the speed at which the set flow comes at the least rise. */
function lowestSpeedPoints(
  full: readonly FanPoint[],
  setFlowM3PerS: number,
  leastRisePa: number,
): readonly FanPoint[] {
  const curve = continued(full);
  const rise = fanRise(curve);
  const riseAtSpeed = (speed: number): number => speed ** 2 * rise(setFlowM3PerS / speed);
  // Below this speed the set flow lies beyond the last point.
  let low = setFlowM3PerS / curve[curve.length - 1]!.volumeFlowM3PerS;
  let high = 1;
  for (let halving = 0; halving < 60; halving++) {
    const middle = 0.5 * (low + high);
    if (riseAtSpeed(middle) > leastRisePa) high = middle;
    else low = middle;
  }
  return fanBySimilarity(curve, { speedRatio: high });
}

/** The curve and one more point on its last stretch, as far again: the fan is helped there. */
function continued(full: readonly FanPoint[]): readonly FanPoint[] {
  const last = full[full.length - 1]!;
  const before = full[full.length - 2] ?? last;
  return [
    ...full,
    {
      pressureRisePa: 2 * last.pressureRisePa - before.pressureRisePa,
      volumeFlowM3PerS: 2 * last.volumeFlowM3PerS - before.volumeFlowM3PerS,
    },
  ];
}
