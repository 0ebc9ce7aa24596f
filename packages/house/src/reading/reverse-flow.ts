import type { FanPoint, FlowLawDescription } from '@evendraft/airflow';

/**
 * The law of a fan that nothing stops from being blown backwards, from its law with a backdraft damper.
 *
 * Beyond shut-off the curve goes on as it came, turned about its point of least flow: the pressure that it
 * takes to blow the running fan backwards grows as the pressure falls that it gives forwards.
 *
 * @param law - law of the fan; what is no fan curve is left as it is
 * @returns the law
 */
export function withReverseFlow(law: FlowLawDescription): FlowLawDescription {
  if (law.kind !== 'fanCurve') return law;
  // Turned about, a part that rises would rise again: its envelope goes straight on.
  if (law.risingPart !== undefined) return { ...law, beyondShutOff: 'extended' };
  const forward = [...law.points].sort((a, b) => a.volumeFlowM3PerS - b.volumeFlowM3PerS);
  const least = forward[0];
  if (least === undefined) return law;
  const turned = forward.slice(1).map((point): FanPoint => ({
    volumeFlowM3PerS: 2 * least.volumeFlowM3PerS - point.volumeFlowM3PerS,
    pressureRisePa: 2 * least.pressureRisePa - point.pressureRisePa,
  }));
  return { ...law, points: [...turned.reverse(), ...forward], beyondShutOff: 'extended' };
}
