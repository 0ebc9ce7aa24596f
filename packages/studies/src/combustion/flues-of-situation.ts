import {
  flueConstructions,
  gravity,
  standardPressure,
  type AirState,
  type DuctDescription,
  type FluePiece,
} from '@evendraft/airflow';
import {
  houseScenario,
  type Appliance,
  type CompiledHouse,
  type Flue,
  type FlueSection,
  type HouseLink,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import { solveNetwork, type Scenario } from '@evendraft/network';
import { flameOfStage, type Flame } from './flame-of-stage.js';
import { scenarioWithoutFlues, topNode, type HouseWithoutFlues } from './house-without-flues.js';
import { airOfTemperature } from './vent-gas.js';
import type { Vent, VentMember, VentSystem } from './vent-system.js';

/** A state in a weather at an airtightness, as the network takes it. */
export interface FlueSituation {
  /** With the stage of every appliance that fires. */
  readonly state: OperatingState;
  readonly weather: HouseWeather;
  readonly airtightnessCase: number;
  /** How the columns of shafts stand, in the order of `twoStateLinks`; those of flues are found. */
  readonly columns?: readonly ('upward' | 'downward')[];
}

/** A flue that is open in a situation. */
export interface OpenFlue {
  readonly appliance: Appliance & { readonly flue: Flue };
  readonly member: VentMember;
  /** Present while it burns. */
  readonly flame?: Flame;
  /** Of the vent's entry alone, in velocity pressures of the collar's area [-]. */
  readonly entryLoss: number;
  /** At the collar [m2]. */
  readonly collarAreaM2: number;
  /**
   * A burner sends its gas into a vent that is meant to draw and has no relief: where that stands above the pressure of
   * its room, gas comes out at joints and through the appliance, nobody knows how much.
   */
  readonly leaksUnderPressure: boolean;
  /** Height of the collar above the house's datum [m]. */
  readonly collarHeightM: number;
  /** Places in the network of the house. */
  readonly collarZone: number;
  readonly roomZone: number;
}

/** The flues of a house in a situation, and what the rest of the house does with their flows. */
export interface FluesOfSituation {
  /** In the order of the systems' members. */
  readonly flues: readonly OpenFlue[];
  readonly systems: readonly VentSystem[];
  /** As `findDraftRoots` takes it. */
  readonly response: (flows: readonly number[]) => readonly number[] | undefined;
  /** By flue: flues of one number stand in one room and end outdoors, as `findDraftRoots` takes it. */
  readonly rooms: readonly number[];
  /** Pressure of the room at the collar's height minus outdoors, by flue, when the flows are taken [Pa]. */
  readonly roomPressures: (flows: readonly number[]) => readonly number[] | undefined;
  /** Of the whole house, columns of flues as the house assumes them. */
  readonly scenario: Scenario;
}

/** Losses of entries as `airflow` counts them: of a draft hood, and of the velocity that gas gets elsewhere [-]. */
const entryLosses = { hood: 1.5, other: 1 };

/**
 * Sets up the flues of a house in one situation.
 *
 * @param compiled - the compiled house
 * @param rest - its network without flues
 * @param situation - state, weather and airtightness
 * @returns vents, and the response of the rest
 */
export function fluesOfSituation(
  compiled: CompiledHouse,
  rest: HouseWithoutFlues,
  situation: FlueSituation,
): FluesOfSituation {
  const { house } = compiled;
  const { scenario } = houseScenario(compiled, situation);
  const open = house.appliances.flatMap((appliance) => {
    const flue = openFlue(compiled, { appliance, situation, scenario });
    return flue === undefined ? [] : [flue];
  });
  const owners = [...new Set(open.map(({ appliance: { id, flue } }) => flue.joins ?? id))];
  const systems = owners.map((owner): VentSystem => {
    const members = open.filter(({ appliance: { id, flue } }) => (flue.joins ?? id) === owner);
    const chimney = chimneyOf(compiled, owner, situation);
    const top = topNode(compiled, owner);
    return {
      members: members.map(({ member }) => member),
      ...(chimney === undefined ? {} : { chimney }),
      outdoorAir: situation.weather.outdoorAir,
      topAir: airAtNode(compiled, situation.weather, top),
      pressurePa: standardPressure(house.altitudeM),
    };
  });
  const flues = systems.flatMap(({ members }) =>
    members.map(({ appliance }) => open.find(({ appliance: { id } }) => id === appliance)!),
  );
  const order = flues.map(({ appliance: { id } }) => rest.appliances.indexOf(id));
  const places = flues.map((flue) => placesOf(compiled, flue));

  let start: Float64Array | undefined;
  const solve = (flows: readonly number[]) => {
    const all = new Array<number>(rest.appliances.length).fill(0);
    flows.forEach((flow, k) => (all[order[k]!] = flow));
    const result = solveNetwork(rest.network, scenarioWithoutFlues(rest, scenario, all), {
      tolerance: 1e-12,
      enclosure: false,
      ...(start === undefined ? {} : { start }),
    });
    const solved =
      result.status === 'not-converged'
        ? solveNetwork(rest.network, scenarioWithoutFlues(rest, scenario, all), {
            enclosure: false,
          })
        : result;
    if (solved.status !== 'solved') return undefined;
    start = solved.pressuresPa;
    const at = (node: string, heightM: number): number =>
      pressureAtNode(compiled, rest, { pressuresPa: solved.pressuresPa, scenario, node, heightM });
    return places.map(({ zone, collarM, top, topM }) => ({
      roomPa: at(zone, collarM),
      topPa: at(top, topM),
    }));
  };
  return {
    flues,
    systems,
    scenario,
    rooms: roomsOf(compiled, flues),
    response: (flows) => solve(flows)?.map(({ roomPa, topPa }) => roomPa - topPa),
    roomPressures: (flows) => solve(flows)?.map(({ roomPa }) => roomPa),
  };
}

/** Flues that end in a zone have that zone's pressure in what the house gives, and stand by themselves. */
function roomsOf(compiled: CompiledHouse, flues: readonly OpenFlue[]): readonly number[] {
  const { zoneIndex } = compiled.network;
  return flues.map(({ appliance: { id, zone } }, k) =>
    zoneIndex.has(topNode(compiled, id))
      ? k
      : flues.findIndex(
          ({ appliance: other }) =>
            other.zone === zone && !zoneIndex.has(topNode(compiled, other.id)),
        ),
  );
}

function openFlue(
  compiled: CompiledHouse,
  of: {
    readonly appliance: Appliance;
    readonly situation: FlueSituation;
    readonly scenario: Scenario;
  },
): OpenFlue | undefined {
  const { appliance, situation, scenario } = of;
  const { flue, id, zone } = appliance;
  if (flue === undefined) return undefined;
  const { links, network } = compiled;
  const isOpen = (link: HouseLink, i: number): boolean =>
    link.role.kind === 'flue' && link.role.id === id && scenario.linkScale?.[i] !== 0;
  const own = links.filter(isOpen);
  const part = (name: string): HouseLink | undefined =>
    own.find(({ role }) => role.kind === 'flue' && role.part === name);
  const ventLink = part('vent') ?? part('shut vent');
  if (ventLink === undefined) return undefined;
  const zoneAir = airAtNode(compiled, situation.weather, zone);
  const stage = flue.stages.find(({ name }) => name === situation.state.firing?.[id]);
  const flame = stage && flameOfStage(appliance, stage, zoneAir.temperatureC);
  // A flue that stands warm heats what passes it, however much that is.
  const standsWarm = stage?.gas !== undefined && stage.ventFlowKgPerS === 0;
  const roomAir = standsWarm
    ? airOfTemperature(
        zoneAir.temperatureC + stage.gas.aboveRoomK,
        standardPressure(compiled.house.altitudeM),
      )
    : zoneAir;
  const alone = part('chimney') === undefined && flue.joins === undefined;
  const sections = alone ? [...flue.connector, ...flue.chimney] : flue.connector;
  const inlets = own.filter(
    ({ role }) => role.kind === 'flue' && flue.inlets.some(({ name }) => name === role.part),
  );
  const hood = inlets.some(({ role }) => role.kind === 'flue' && role.part === 'draft hood');
  const first = sections[0];
  return {
    appliance: { ...appliance, flue },
    ...(flame === undefined ? {} : { flame }),
    member: {
      appliance: id,
      roomAir,
      inlets: inlets.map(({ description }) => ({ link: description.id, law: description.law })),
      injectedKgPerS: stage?.gasFlowKgPerS ?? 0,
      gasFlowKgPerS: flame?.gasFlowKgPerS ?? 0,
      gasTemperatureC: flame?.gasTemperatureC ?? roomAir.temperatureC,
      vent: ventOf(ventLink, {
        sections,
        roomC: zoneAir.temperatureC,
        outdoorC: situation.weather.outdoorAir.temperatureC,
      }),
    },
    entryLoss: Math.min(hood ? entryLosses.hood : entryLosses.other, first?.lossCoefficient ?? 0),
    collarAreaM2: first?.areaM2 ?? 1,
    leaksUnderPressure:
      appliance.vent === 'natural draft' &&
      (stage?.gasFlowKgPerS ?? 0) > 0 &&
      inlets.every(({ description }) => description.law.kind !== 'orifice'),
    collarHeightM: ventLink.description.fromHeightM,
    collarZone: network.zoneIndex.get(ventLink.description.from) ?? -1,
    roomZone: network.zoneIndex.get(zone) ?? -1,
  };
}

/** The chimney of several appliances; absent where its owner's flue is its own. */
function chimneyOf(
  compiled: CompiledHouse,
  owner: string,
  situation: FlueSituation,
): Vent | undefined {
  const link = compiled.links.find(
    ({ role }) => role.kind === 'flue' && role.id === owner && role.part === 'chimney',
  );
  const appliance = compiled.house.appliances.find(({ id }) => id === owner);
  if (link === undefined || appliance?.flue === undefined) return undefined;
  return ventOf(link, {
    sections: appliance.flue.chimney,
    roomC: airAtNode(compiled, situation.weather, appliance.zone).temperatureC,
    outdoorC: situation.weather.outdoorAir.temperatureC,
  });
}

function ventOf(
  { description }: HouseLink,
  of: {
    readonly sections: readonly FlueSection[];
    readonly roomC: number;
    readonly outdoorC: number;
  },
): Vent {
  const { sections, roomC, outdoorC } = of;
  return {
    link: description.id,
    duct: description.law as DuctDescription,
    pieces: sections.map(({ construction, stands, ...section }): FluePiece => ({
      ...section,
      construction: flueConstructions[construction],
      surroundings: stands,
      ambientTemperatureC: stands === 'indoors' ? roomC : outdoorC,
    })),
  };
}

function placesOf(
  compiled: CompiledHouse,
  { appliance: { id, zone, flue } }: OpenFlue,
): {
  readonly zone: string;
  readonly collarM: number;
  readonly top: string;
  readonly topM: number;
} {
  const { links } = compiled;
  const heights = (owner: string, parts: readonly string[]) =>
    links.findLast(
      ({ role }) => role.kind === 'flue' && role.id === owner && parts.includes(role.part),
    )?.description;
  const owner = flue.joins ?? id;
  return {
    zone,
    collarM: heights(id, ['vent', 'shut vent'])?.fromHeightM ?? 0,
    top: topNode(compiled, id),
    topM: (heights(owner, ['chimney']) ?? heights(owner, ['vent', 'shut vent']))?.toHeightM ?? 0,
  };
}

function airAtNode(
  { network: { zoneIndex, boundaryIndex } }: CompiledHouse,
  { zoneAir, boundaryAir }: HouseWeather,
  node: string,
): AirState {
  const zone = zoneIndex.get(node);
  const air = zone === undefined ? boundaryAir : zoneAir;
  const index = zone ?? boundaryIndex.get(node) ?? -1;
  return {
    temperatureC: air.temperatureC[index]!,
    densityKgPerM3: air.densityKgPerM3[index]!,
  };
}

/** Pressure at a height in a zone or boundary minus outdoors at that height [Pa]. */
function pressureAtNode(
  { network: whole }: CompiledHouse,
  { network }: HouseWithoutFlues,
  of: {
    readonly pressuresPa: Float64Array;
    readonly scenario: Scenario;
    readonly node: string;
    readonly heightM: number;
  },
): number {
  const { pressuresPa, scenario, node, heightM } = of;
  const zone = network.zoneIndex.get(node);
  const boundary = network.boundaryIndex.get(node) ?? -1;
  const { zones, boundaries, outdoorAir } = network.description;
  const [place, pressurePa, density] =
    zone === undefined
      ? [
          boundaries[boundary]!,
          scenario.boundaryPressuresPa?.[boundary] ?? boundaries[boundary]!.pressurePa,
          scenario.boundaryAir?.densityKgPerM3[boundary],
        ]
      : [
          zones[zone]!,
          pressuresPa[zone]!,
          scenario.zoneAir?.densityKgPerM3[whole.zoneIndex.get(node)!],
        ];
  const outdoor = (scenario.outdoorAir ?? outdoorAir).densityKgPerM3;
  return (
    pressurePa +
    (outdoor - (density ?? place.air.densityKgPerM3)) * gravity * (heightM - place.heightM)
  );
}
