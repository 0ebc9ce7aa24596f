import { flowAt, referenceAir, type FlowLawDescription } from '@evendraft/airflow';
import {
  insideZoneKinds,
  type AirtightnessCase,
  type House,
  type Outlet,
  type TestPreparation,
} from '../house.js';

/** An airtightness case after the separately modelled openings are taken off. */
export interface RemainingLeakage {
  readonly name: AirtightnessCase['name'];
  /** Flow coefficient of what remains, at reference air [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow of the tested envelope at the test pressure [m3/s]. */
  readonly testedFlowM3PerS: number;
  /** Part of it that goes through separately modelled openings [m3/s]. */
  readonly modelledFlowM3PerS: number;
}

/**
 * Leakage that remains for the leak shares in each airtightness case.
 *
 * A test measured every opening that was not sealed. What the house models by itself is therefore
 * subtracted, at the test pressure. Openings to a buffer space outside the envelope count as if that
 * space stood at outdoor pressure during the test.
 *
 * @param house - the house
 * @returns one row a case; a coefficient of zero or below means that nothing is left
 */
export function remainingLeakage(house: House): readonly RemainingLeakage[] {
  const { cases, exponent } = house.airtightness;
  return cases.map((test) => {
    const modelledFlowM3PerS = modelledOpenings(house).reduce(
      (sum, law) => sum + testFlow(law, test.pressurePa, house.airtightness.direction),
      0,
    );
    const remaining = test.volumeFlowM3PerS - modelledFlowM3PerS;
    return {
      name: test.name,
      coefficientM3PerSPaN: remaining / test.pressurePa ** exponent,
      testedFlowM3PerS: test.volumeFlowM3PerS,
      modelledFlowM3PerS,
    };
  });
}

function modelledOpenings(house: House): readonly FlowLawDescription[] {
  const inside = new Set(
    house.zones.filter((zone) => insideZoneKinds.includes(zone.kind)).map((zone) => zone.id),
  );
  const leadsOut = (zone: string, to: Outlet): boolean =>
    inside.has(zone) &&
    !(to.kind === 'zone' && inside.has(to.zone)) &&
    !(to.kind === 'surrounding' && house.airtightness.guarded);
  const standing = (
    item: { readonly zone: string; readonly to: Outlet; readonly duringTest: TestPreparation },
    closed: FlowLawDescription | undefined,
    open: FlowLawDescription | undefined,
  ): readonly FlowLawDescription[] => {
    if (item.duringTest === 'sealed' || !leadsOut(item.zone, item.to)) return [];
    const law = item.duringTest === 'open' ? open : closed;
    return law === undefined ? [] : [law];
  };
  return [
    ...house.openings.flatMap((o) => standing(o, undefined, o.law)),
    ...house.makeUpOpenings.flatMap((m) => standing(m, m.closedLaw, m.openLaw)),
    ...house.devices.flatMap((d) => standing(d, d.offLaw, d.offLaw)),
  ];
}

function testFlow(
  law: FlowLawDescription,
  pressurePa: number,
  direction: House['airtightness']['direction'],
): number {
  // A one-way damper lets air in, so its own direction is against that of the other openings.
  const inward = law.kind === 'oneWayDamper' ? pressurePa : -pressurePa;
  const flow = (pressureDifferencePa: number): number =>
    Math.abs(flowAt(law, pressureDifferencePa).massFlowKgPerS) / referenceAir.densityKgPerM3;
  if (direction === 'pressurized') return flow(-inward);
  if (direction === 'both') return (flow(inward) + flow(-inward)) / 2;
  return flow(inward);
}
