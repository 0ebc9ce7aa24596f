import type { CompiledHouse } from '@evendraft/house';
import { largestExhaust } from '@evendraft/remedies';
import { makeUpWords, type Assessment, type ExhaustCurveDrawingData } from '@evendraft/report';
import {
  exhaustCurveStudy,
  questionOf,
  type ExhaustCurveStudy,
  type Situation,
} from '@evendraft/studies';

/**
 * Pressure against exhaust flow of the largest exhaust, as the house is and with each make-up air that was sized,
 * with the points of its speeds.
 *
 * @param compiled - the compiled house
 * @param of - the situation whose weather and doors count, the findings, units of sizes, signal
 * @returns what the drawing needs; undefined where the house has no exhaust or it could not be solved
 */
export async function exhaustCurveData(
  compiled: CompiledHouse,
  of: {
    readonly worst: Situation;
    readonly assessment: Assessment;
    readonly system: 'us' | 'si';
    readonly signal: AbortSignal | undefined;
  },
): Promise<ExhaustCurveDrawingData | undefined> {
  const { worst, assessment, system, signal } = of;
  const device = largestExhaust(compiled.house);
  if (device === undefined) return undefined;
  const { cures } = assessment;
  const made = cures.status === 'solved' ? cures.makeUpCurves : undefined;
  const study =
    made?.asItIs ??
    (await exhaustCurveStudy(
      compiled,
      { ...questionOf(compiled, worst), device: device.id },
      signal === undefined ? {} : { signal },
    ));
  if (study === undefined) return undefined;
  const options = (made?.withMakeUp ?? []).map(({ makeUp, curve }) => ({
    name: makeUpWords(makeUp, system),
    curve,
  }));
  const cases = compiled.house.airtightness.cases.length;
  return {
    zone: study.zone,
    condition: `${study.device} alone, ${worst.weather}${cases > 1 ? `, ${worst.airtightness}` : ''}`,
    curves: [
      { name: 'as the house is', points: study.points },
      ...options.map(({ name, curve: { points } }) => ({ name, points })),
    ],
    operatingPoints: [
      ...study.operatingPoints.map(({ speed, ...point }) => ({
        name: `${study.device} ${speed}`,
        ...point,
      })),
      ...options.flatMap(({ name, curve }) => fastest(curve, name)),
    ],
    limits: assessment.findings.flatMap(({ appliance, zone, judged }) =>
      judged === undefined || zone !== study.zone || judged.quantity !== 'zone minus outdoors'
        ? []
        : [{ appliance, limitPa: judged.limitPa }],
    ),
  };
}

/** Where the device works at its highest speed with make-up air. */
function fastest(
  { device, operatingPoints }: ExhaustCurveStudy,
  name: string,
): ExhaustCurveDrawingData['operatingPoints'] {
  return operatingPoints
    .slice(-1)
    .map(({ speed, ...point }) => ({ name: `${device} ${speed}, ${name}`, ...point }));
}
