import type { Diffuser, House, PathPart } from '@evendraft/house';
import {
  judgeDiffuser,
  judgeHoodFlow,
  judgeJetAtHood,
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
  { hoods = {}, hoodFlowGuidance, largestVelocitiesMPerS = {} }: AirFacts,
): readonly RuleFinding[] {
  if (largest === undefined) return [];
  const { balance, air } = largest;
  const outdoorC =
    house.weathers.find(({ name }) => name === balance.weather)?.outdoorTemperatureC ?? Number.NaN;
  const roomC = (id: string): number => {
    const temperatureC = house.zones.find((zone) => zone.id === id)?.temperatureC ?? Number.NaN;
    return temperatureC === 'outdoors' ? outdoorC : temperatureC;
  };
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
  const made = new Set([...house.makeUpOpenings, ...house.devices].map(({ id }) => id));
  const atHoodMPerS = largestVelocitiesMPerS['at the hood'];
  const inlets = outletsOf(house).flatMap(({ id, zone, law, parts, face, diffuser, plenum }) => {
    const entry = air.entries.find(({ item }) => item === id);
    if (entry === undefined) return [];
    const { volumeFlowM3PerS: flowM3PerS } = entry;
    const areaM2 = face ?? (law === undefined ? undefined : areaOf(law));
    const jet =
      diffuser === undefined || areaM2 === undefined || !hoodZones.has(zone)
        ? undefined
        : judgeJetAtHood({
            subject: id,
            flowM3PerS,
            areaM2,
            diffuser,
            ...(atHoodMPerS === undefined ? {} : { largestMPerS: atHoodMPerS }),
          });
    // Without a distance the outlet is taken to stand at the hood.
    const beside = hoodZones.has(zone) && (plenum || diffuser?.distanceToHoodM === undefined);
    return [
      // A window or a grille elsewhere is no diffuser.
      ...(beside || made.has(id)
        ? velocity(id, beside ? 'at the hood' : 'at a diffuser', { flowM3PerS, areaM2 })
        : []),
      ...(jet === undefined || plenum ? [] : [jet]),
      ...(diffuser === undefined || !hoodZones.has(zone)
        ? []
        : judgeDiffuser({
            subject: id,
            airTemperatureC: diffuser.airTemperatureC ?? outdoorC,
            roomTemperatureC: roomC(zone),
            ...(diffuser.distanceToHoodM === undefined
              ? {}
              : { distanceM: diffuser.distanceToHoodM }),
            directedAway: diffuser.directedAway ?? false,
          })),
      ...velocity(id, 'in a quiet duct', {
        flowM3PerS,
        areaM2: narrowest([...(law === undefined ? [] : [law]), ...lawsOf(parts)]),
      }),
    ];
  });
  const exhausts = balance.devices.flatMap(({ device: id, deliveredFlowM3PerS }) => {
    const path = house.devices.find((device) => device.id === id)?.path;
    if (!isHood(id)) return [];
    const areaM2 = narrowest([...lawsOf(path?.before), ...lawsOf(path?.after)]);
    return [
      ...velocity(id, 'in a hood duct', { flowM3PerS: deliveredFlowM3PerS, areaM2 }),
      ...judgeHoodFlow({
        device: id,
        deliveredFlowM3PerS,
        ...hoods[id],
        ...(hoodFlowGuidance === undefined ? {} : { guidance: hoodFlowGuidance }),
      }),
    ];
  });
  return [...inlets, ...exhausts];
}

/** Whatever brings air into a room on purpose, with what is known of where it comes out. */
interface AirOutlet {
  readonly id: string;
  readonly zone: string;
  readonly law?: FlowLawDescription;
  readonly parts?: readonly PathPart[];
  readonly face?: number;
  readonly diffuser?: Diffuser;
  /** It comes out of a plenum of the hood itself. */
  readonly plenum: boolean;
}

function outletsOf({ makeUpOpenings, openings, devices }: House): readonly AirOutlet[] {
  return [
    ...makeUpOpenings.map(({ openLaw, faceAreaM2, throughHood, ...rest }) => ({
      ...rest,
      law: openLaw,
      plenum: throughHood !== undefined,
      ...(faceAreaM2 === undefined ? {} : { face: faceAreaM2 }),
    })),
    ...openings.map(({ id, zone, law, parts = [] }) => ({ id, zone, law, parts, plenum: false })),
    ...devices
      .filter(({ direction }) => direction === 'supply')
      .map(({ id, zone, path, faceAreaM2, diffuser }) => ({
        id,
        zone,
        plenum: false,
        parts: [...(path?.before ?? []), ...(path?.after ?? [])],
        ...(faceAreaM2 === undefined ? {} : { face: faceAreaM2 }),
        ...(diffuser === undefined ? {} : { diffuser }),
      })),
  ];
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
