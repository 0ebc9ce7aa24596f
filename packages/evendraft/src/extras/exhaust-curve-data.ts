import type { CompiledHouse } from '@evendraft/house';
import { largestExhaust } from '@evendraft/remedies';
import type { Assessment, ExhaustCurveDrawingData } from '@evendraft/report';
import { exhaustCurveStudy, questionOf, type Situation } from '@evendraft/studies';

/**
 * Pressure against exhaust flow of the largest exhaust, with the points of its speeds.
 *
 * @param compiled - the compiled house
 * @param of - the situation whose weather and doors count, the findings, signal
 * @returns what the drawing needs; undefined where the house has no exhaust or it could not be solved
 */
export async function exhaustCurveData(
  compiled: CompiledHouse,
  of: {
    readonly worst: Situation;
    readonly assessment: Assessment;
    readonly signal: AbortSignal | undefined;
  },
): Promise<ExhaustCurveDrawingData | undefined> {
  const { worst, assessment, signal } = of;
  const device = largestExhaust(compiled.house);
  if (device === undefined) return undefined;
  const study = await exhaustCurveStudy(
    compiled,
    { ...questionOf(compiled, worst), device: device.id },
    signal === undefined ? {} : { signal },
  );
  if (study === undefined) return undefined;
  const cases = compiled.house.airtightness.cases.length;
  return {
    zone: study.zone,
    condition: `${study.device} alone, ${worst.weather}${cases > 1 ? `, ${worst.airtightness}` : ''}`,
    curves: [{ name: 'as the house is', points: study.points }],
    operatingPoints: study.operatingPoints.map(({ speed, ...point }) => ({
      name: `${study.device} ${speed}`,
      ...point,
    })),
    limits: assessment.findings.flatMap(({ appliance, zone, judged }) =>
      judged === undefined || zone !== study.zone || judged.quantity !== 'zone minus outdoors'
        ? []
        : [{ appliance, limitPa: judged.limitPa }],
    ),
  };
}
