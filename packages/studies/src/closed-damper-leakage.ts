import {
  closedDamperLaw,
  damperLeakageClasses,
  referenceAir,
  type DamperLeakageClass,
  type FlowLawDescription,
} from '@evendraft/airflow';
import { seriesFlow, type House, type PathPart } from '@evendraft/house';

/** What the closed damper of one make-up opening adds to a blower-door result; plain JSON. */
export interface ClosedDamperLeakage {
  readonly item: string;
  /** Free area of the damper, where its law has one [m²]. */
  readonly areaM2?: number;
  /** As the house file describes it; absent where it states no leakage. */
  readonly stated?: LeakageInTest;
  /** What each class allows at that area; empty where the area is not known. */
  readonly byClass: readonly (LeakageInTest & { readonly leakageClass: DamperLeakageClass })[];
}

/** A leakage beside a tested flow. */
export interface LeakageInTest {
  /** Through damper and duct at 50 Pa, reference air [m³/s]. */
  readonly flowAt50PaM3PerS: number;
  /** By the flow of the house's test at 50 Pa, its tightest case [-]. */
  readonly shareOfTested: number;
}

const testPressurePa = 50;

/**
 * What closed make-up dampers add to a blower-door result, as described and by leakage class.
 *
 * Flow at 50 Pa through the closed damper and the duct before it. A class is an upper bound by test of a new
 * damper; see `damperLeakageClasses` of the laws of air.
 *
 * @param house - the house
 * @returns one row for each make-up opening and each flap
 */
export function closedDamperLeakage(house: House): readonly ClosedDamperLeakage[] {
  const { cases, exponent } = house.airtightness;
  const testedM3PerS = Math.min(
    ...cases.map(
      ({ volumeFlowM3PerS, pressurePa }) =>
        volumeFlowM3PerS * (testPressurePa / pressurePa) ** exponent,
    ),
  );
  const inTest = (
    law: FlowLawDescription,
    parts: readonly PathPart[] | undefined,
  ): LeakageInTest => {
    const laws = [...(parts ?? []).map((part) => ({ law: part.law })), { law }];
    const flowAt50PaM3PerS = seriesFlow(laws, testPressurePa) / referenceAir.densityKgPerM3;
    return { flowAt50PaM3PerS, shareOfTested: flowAt50PaM3PerS / testedM3PerS };
  };
  return dampersOf(house).map(({ item, open, closed, parts }) => {
    const areaM2 = areaOf(open);
    return {
      item,
      ...(areaM2 === undefined ? {} : { areaM2 }),
      ...(closed === undefined ? {} : { stated: inTest(closed, parts) }),
      byClass:
        areaM2 === undefined
          ? []
          : leakageClasses.map((leakage) => ({
              leakageClass: leakage,
              ...inTest(closedDamperLaw({ areaM2, leakage }), parts),
            })),
    };
  });
}

const leakageClasses = Object.keys(damperLeakageClasses) as readonly DamperLeakageClass[];

interface MakeUpDamper {
  readonly item: string;
  readonly open: FlowLawDescription;
  readonly closed: FlowLawDescription | undefined;
  readonly parts: readonly PathPart[] | undefined;
}

function dampersOf(house: House): readonly MakeUpDamper[] {
  return [
    ...house.makeUpOpenings.map(({ id, openLaw, closedLaw, parts }) => ({
      item: id,
      open: openLaw,
      closed: closedLaw,
      parts,
    })),
    ...house.openings.flatMap(({ id, law, parts }): readonly MakeUpDamper[] => {
      if (law.kind !== 'gravityDamper' && law.kind !== 'oneWayDamper') return [];
      const { closedLeakage } = law;
      const closed: FlowLawDescription | undefined = closedLeakage && {
        kind: 'powerLaw',
        ...closedLeakage,
      };
      return [{ item: id, open: law, closed, parts }];
    }),
  ];
}

function areaOf(law: FlowLawDescription): number | undefined {
  if (law.kind === 'orifice' || law.kind === 'gravityDamper') return law.areaM2;
  return law.kind === 'duct' ? law.sections.at(-1)?.areaM2 : undefined;
}
