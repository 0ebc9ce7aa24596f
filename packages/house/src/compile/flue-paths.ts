import {
  flueConstructions,
  type DuctDescription,
  type FlowLawDescription,
} from '@evendraft/airflow';
import type { Flue, FlueSection } from '../flue.js';
import type { Appliance, House } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HouseLink, HousePaths, Junction, LinkRole } from './house-link.js';
import { outletNode } from './house-nodes.js';
import { linkId } from './link-id.js';

/** An appliance whose flue is an opening of the house. */
export type FluedAppliance = Appliance & { readonly flue: Flue };

/**
 * The appliances of a house whose flues are openings of it.
 *
 * @param house - the house
 * @returns appliances with flues, in the order of the house file
 */
export function fluedAppliances(house: House): readonly FluedAppliance[] {
  return house.appliances.filter((each): each is FluedAppliance => each.flue !== undefined);
}

/**
 * Id of the junction at the collar of an appliance: where its gas, room air and the vent meet.
 *
 * @param appliance - id of the appliance
 * @returns id of a zone of the network
 */
export function collarJunction(appliance: string): string {
  return `@junction ${appliance} 1`;
}

/**
 * Id of the junction where the connectors of several appliances enter one chimney.
 *
 * @param owner - id of the appliance that describes the chimney
 * @returns id of a zone of the network
 */
export function chimneyJunction(owner: string): string {
  return `@junction ${owner} 2`;
}

/**
 * Id of the link from a collar up: the whole flue, or the connector of a flue that shares its chimney.
 *
 * @param appliance - id of the appliance
 * @returns id of the link with the damper open
 */
export function ventLink(appliance: string): string {
  return linkId('flue', appliance, 'vent');
}

/**
 * Id of the link of a shared chimney.
 *
 * @param owner - id of the appliance that describes the chimney
 * @returns id of the link
 */
export function chimneyLink(owner: string): string {
  return linkId('flue', owner, 'chimney');
}

/**
 * Links of the flues of a house. At each collar a junction: ways for room air into the flue, gas of the burner in
 * each stage that has one, and the vent. Flues that share a chimney meet in a junction below it.
 *
 * @param house - the house
 * @returns links and junctions in the order of the appliances
 */
export function fluePaths(house: House): HousePaths {
  const all = fluedAppliances(house);
  const paths = all.map((appliance) => {
    const shares = all.some(({ flue }) => flue.joins === appliance.id);
    return onePath(house, { appliance, shares });
  });
  return {
    links: paths.flatMap(({ links }) => links),
    junctions: paths.flatMap(({ junctions }) => junctions),
  };
}

function onePath(
  house: House,
  of: {
    readonly appliance: FluedAppliance;
    /** Whether others join its chimney. */
    readonly shares: boolean;
  },
): HousePaths {
  const { appliance, shares } = of;
  const { id, origin, zone, flue } = appliance;
  const outlet = outletNode(flue.to);
  const collarM = floorOf(house, zone) + flue.collarHeightM;
  const joinM = collarM + rise(flue.connector);
  const owner = flue.joins ?? (shares ? id : undefined);
  const junction = (junctionId: string, heightM: number): Junction => {
    return { id: junctionId, origin, item: id, heightM, airOf: zone };
  };
  const collar = junction(collarJunction(id), collarM);
  const level = { fromHeightM: collarM, toHeightM: collarM };
  const inlets = flue.inlets.map(({ name, law, stages }): HouseLink => ({
    description: { id: linkId('flue', id, name), origin, from: zone, to: collar.id, ...level, law },
    role: { kind: 'flue', id, part: name, ...(stages === undefined ? {} : { stages }) },
  }));
  const gases = flue.stages
    .filter(({ gasFlowKgPerS }) => gasFlowKgPerS > 0)
    .map(({ name, gasFlowKgPerS: massFlowKgPerS }): HouseLink => ({
      description: {
        id: linkId('flue', id, 'gas', name),
        origin,
        from: zone,
        to: collar.id,
        ...level,
        law: { kind: 'fixedFlow', massFlowKgPerS },
      },
      role: { kind: 'flue', id, part: 'gas', stages: [name] },
    }));
  const upward = (of: {
    readonly id: string;
    readonly from: string;
    readonly to: string;
    readonly heights: readonly [number, number];
    readonly law: FlowLawDescription;
    readonly role: LinkRole;
  }): HouseLink => {
    const { heights, role, ...ends } = of;
    const [fromHeightM, toHeightM] = heights;
    const column = { columnOf: zone, twoState: { upward: zone, downward: outlet } };
    return {
      description: { ...ends, origin, fromHeightM, toHeightM },
      role,
      ...(fromHeightM === toHeightM ? {} : column),
    };
  };
  const whole = owner === undefined;
  const sections = whole ? [...flue.connector, ...flue.chimney] : flue.connector;
  const ends = {
    from: collar.id,
    to: whole ? outlet : chimneyJunction(owner),
    heights: [collarM, whole ? joinM + rise(flue.chimney) : joinM] as [number, number],
  };
  const vents = damperStands(flue).map(({ name, shutAreaM2, stages }) =>
    upward({
      id: name === 'vent' ? ventLink(id) : linkId('flue', id, name),
      ...ends,
      law: ductOf(sections, shutAreaM2),
      role: { kind: 'flue', id, part: name, ...(stages === undefined ? {} : { stages }) },
    }),
  );
  const chimney = upward({
    id: chimneyLink(id),
    from: chimneyJunction(id),
    to: outlet,
    heights: [joinM, joinM + rise(flue.chimney)],
    law: ductOf(flue.chimney),
    role: { kind: 'flue', id, part: 'chimney' },
  });
  return {
    links: [...inlets, ...gases, ...vents, ...(shares ? [chimney] : [])],
    junctions: [collar, ...(shares ? [junction(chimneyJunction(id), joinM)] : [])],
  };
}

/** The vent with its damper open and shut, each with its stages; one link where there is no damper. */
function damperStands({ damper, stages }: Flue): readonly {
  readonly name: 'vent' | 'shut vent';
  readonly shutAreaM2?: number;
  readonly stages?: readonly string[];
}[] {
  if (damper === undefined) return [{ name: 'vent' }];
  const { shutIn, shutAreaM2 } = damper;
  const open = stages.map(({ name }) => name).filter((name) => !shutIn.includes(name));
  const shut = shutAreaM2 > 0 ? [{ name: 'shut vent', shutAreaM2, stages: shutIn } as const] : [];
  return [{ name: 'vent', stages: open }, ...shut];
}

function rise(sections: readonly FlueSection[]): number {
  return sections.reduce((sum, { riseM }) => sum + riseM, 0);
}

/** Loss of a sharp edge in velocity pressures of its area: 1/0.6² [-]. */
const sharpEdgeLoss = 1 / 0.6 ** 2;

/** The law of stretches of flue in series, with a shut damper in them where there is one. */
function ductOf(sections: readonly FlueSection[], shutAreaM2?: number): DuctDescription {
  const pieces = sections.map((section) => ({
    lengthM: section.lengthM,
    hydraulicDiameterM: section.hydraulicDiameterM,
    areaM2: section.areaM2,
    roughnessM: flueConstructions[section.construction].roughnessM,
    frictionMultiplier: 1,
    lossCoefficient: section.lossCoefficient,
  }));
  if (shutAreaM2 === undefined) return { kind: 'duct', sections: pieces };
  const damper = {
    lengthM: 0,
    hydraulicDiameterM: Math.sqrt((4 * shutAreaM2) / Math.PI),
    areaM2: shutAreaM2,
    roughnessM: 0,
    frictionMultiplier: 1,
    lossCoefficient: sharpEdgeLoss,
  };
  return { kind: 'duct', sections: [...pieces, damper] };
}
