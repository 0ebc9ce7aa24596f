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
  const inZone = assessment.findings.filter(
    ({ zone, judged }) => zone === study.zone && judged !== undefined,
  );
  const [pressing] = [...inZone].sort((a, b) => a.judged!.marginPa - b.judged!.marginPa);
  const quantity = pressing?.judged?.quantity ?? 'zone minus outdoors';
  /** A fall is counted from the baseline of the same house: with make-up air that is another one. */
  const drawn = <Point extends { readonly pressurePa: number }>(
    { baselinePa }: ExhaustCurveStudy,
    points: readonly Point[],
  ): readonly Point[] =>
    quantity === 'zone minus outdoors'
      ? points
      : points.map((point) => ({ ...point, pressurePa: point.pressurePa - baselinePa }));
  return {
    zone: study.zone,
    quantity,
    condition: `${study.device} alone, ${worst.weather}${cases > 1 ? `, ${worst.airtightness}` : ''}`,
    curves: [
      { name: 'as the house is', points: drawn(study, study.points) },
      ...options.map(({ name, curve }) => ({ name, points: drawn(curve, curve.points) })),
    ],
    operatingPoints: [
      ...drawn(study, study.operatingPoints).map(({ speed, ...point }) => ({
        name: `${study.device} ${speed}`,
        ...point,
      })),
      ...options.flatMap(({ name, curve }) => drawn(curve, fastest(curve, name))),
    ],
    limits: inZone.flatMap(({ appliance, judged }) =>
      judged?.quantity === quantity ? [{ appliance, limitPa: judged.limitPa }] : [],
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
