import type { House, PathPart } from '@evendraft/house';
import {
  judgeHoodFlow,
  judgeVelocity,
  type AirFacts,
  type RuleFinding,
  type VelocityPlace,
} from '@evendraft/rules';
import type { AirStudy } from './air-study.js';

type FlowLawDescription = PathPart['law'];

/**
 * Velocities of make-up air at its outlet and in its duct, in the ducts of hoods, and the flow of hoods, while
 * the largest exhaust runs alone.
 *
 * @param house - the house
 * @param study - its numbers
 * @param facts - what is known of hoods, and other guidance on velocities
 * @returns findings; none where the situation was not solved
 */
export function judgeMovingAir(
  house: House,
  { largest }: AirStudy,
  { hoods = {}, largestVelocitiesMPerS = {} }: AirFacts,
): readonly RuleFinding[] {
  if (largest === undefined) return [];
  const { balance, air } = largest;
  const isHood = (id: string): boolean => {
    const kind = house.devices.find((device) => device.id === id)?.kind;
    return kind === 'hood' || kind === 'downdraft';
  };
  const velocity = (
    subject: string,
    place: VelocityPlace,
    of: { readonly flowM3PerS: number; readonly areaM2: number | undefined },
  ): readonly RuleFinding[] =>
    of.areaM2 === undefined || !(of.flowM3PerS > 0)
      ? []
      : [
          judgeVelocity({
            subject,
            place,
            flowM3PerS: of.flowM3PerS,
            areaM2: of.areaM2,
            ...(largestVelocitiesMPerS[place] === undefined
              ? {}
              : { largestMPerS: largestVelocitiesMPerS[place] }),
          }),
        ];
  const hoodZones = new Set(house.devices.filter(({ id }) => isHood(id)).map(({ zone }) => zone));
  const inlets = [...house.makeUpOpenings, ...house.openings].flatMap((opening) => {
    const entry = air.entries.find(({ item }) => item === opening.id);
    if (entry === undefined) return [];
    const law = 'openLaw' in opening ? opening.openLaw : opening.law;
    const face = 'faceAreaM2' in opening ? opening.faceAreaM2 : undefined;
    const { volumeFlowM3PerS: flowM3PerS } = entry;
    const atHood = hoodZones.has(opening.zone);
    return [
      ...(atHood
        ? velocity(opening.id, 'at the hood', { flowM3PerS, areaM2: face ?? areaOf(law) })
        : []),
      ...velocity(opening.id, 'in a quiet duct', {
        flowM3PerS,
        areaM2: narrowest([law, ...lawsOf(opening.parts)]),
      }),
    ];
  });
  const exhausts = balance.devices.flatMap(({ device: id, deliveredFlowM3PerS }) => {
    const path = house.devices.find((device) => device.id === id)?.path;
    if (!isHood(id)) return [];
    const areaM2 = narrowest([...lawsOf(path?.before), ...lawsOf(path?.after)]);
    return [
      ...velocity(id, 'in a hood duct', { flowM3PerS: deliveredFlowM3PerS, areaM2 }),
      ...judgeHoodFlow({ device: id, deliveredFlowM3PerS, ...hoods[id] }),
    ];
  });
  return [...inlets, ...exhausts];
}

function lawsOf(parts: readonly PathPart[] | undefined): readonly FlowLawDescription[] {
  return (parts ?? []).map(({ law }) => law);
}

function areaOf(law: FlowLawDescription): number | undefined {
  if (law.kind === 'orifice' || law.kind === 'gravityDamper') return law.areaM2;
  return narrowest([law]);
}

/** Cross-section of the narrowest duct among laws; undefined where none is a duct [m²]. */
function narrowest(laws: readonly FlowLawDescription[]): number | undefined {
  const areas = laws.flatMap((law) =>
    law.kind === 'duct' ? law.sections.map(({ areaM2 }) => areaM2) : [],
  );
  return areas.length === 0 ? undefined : Math.min(...areas);
}
