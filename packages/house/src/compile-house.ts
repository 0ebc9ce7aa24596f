import type { AirState } from '@evendraft/airflow';
import {
  buildNetwork,
  type LinkDescription,
  type NetworkDescription,
  type NodeAir,
} from '@evendraft/network';
import type { Issue } from '@evendraft/text';
import { formatQuantity } from '@evendraft/units';
import { flueAir } from './compile/flue-air.js';
import { followInterlocks, type FollowedState } from './compile/followed-state.js';
import { columnDensities } from './compile/column-densities.js';
import type { CompiledHouse, HouseScenario, HouseWeather, StallingFans } from './compiled-house.js';
import type { HouseLink } from './compile/house-link.js';
import { houseNodes, type HouseNodes } from './compile/house-nodes.js';
import { housePaths } from './compile/house-paths.js';
import { remainingLeakage, type RemainingLeakage } from './compile/remaining-leakage.js';
import { windOnHouse } from './compile/wind-on-house.js';
import type { House, Weather } from './house.js';
import type { OperatingState } from './operating-state.js';

/** A compiled house, or why it cannot be compiled. */
export type CompileResult =
  | { readonly ok: true; readonly compiled: CompiledHouse }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Compiles a house to a network.
 *
 * @param house - the house
 * @returns the compiled house, or issues: `airtightness.nothing-left` where separately modelled openings
 * carry all that the test measured, `airtightness.flow-unknown` where it cannot be told what one carried,
 * `house.not-a-network` for what the network refuses
 */
export function compileHouse(house: House): CompileResult {
  const leakage = remainingLeakage(house);
  const first = leakage[0];
  const weather = house.weathers[0];
  if (first === undefined) return { ok: false, issues: [missing('airtightness')] };
  if (weather === undefined) return { ok: false, issues: [missing('weather')] };
  const unknown = new Set(leakage.flatMap((row) => row.unknown ?? []));
  if (unknown.size > 0) return { ok: false, issues: [...unknown].map(flowUnknown(house)) };
  const exhausted = leakage.filter((row) => !(row.coefficientM3PerSPaN > 0));
  if (exhausted.length > 0) {
    return { ok: false, issues: exhausted.map((row) => nothingLeft(house, row)) };
  }
  const { links: bare, junctions } = housePaths(house, first.coefficientM3PerSPaN);
  const nodes = houseNodes(house, weather, junctions);
  const links = withColumns(bare, nodes);
  const built = buildNetwork({ ...nodes, links: links.map((link) => link.description) });
  if (built.status === 'rejected') {
    return {
      ok: false,
      issues: built.issues.map((issue) => ({
        code: 'house.not-a-network',
        severity: issue.severity,
        path: pathOf(issue.origin),
        parameters: { ...issue.parameters, problem: issue.code },
      })),
    };
  }
  const twoStateLinks = links.flatMap(({ twoState, description: { id } }, index) =>
    twoState === undefined ? [] : [{ ...twoState, index, id }],
  );
  const { network } = built;
  const stalls = stallingFans(house, network.description, links);
  return {
    ok: true,
    compiled: {
      ...{ house, network, links, junctions, twoStateLinks },
      ...(stalls === undefined ? {} : { stalls }),
      leakage,
    },
  };
}

/** Fans of which every flow is wanted, with their own curves in the place of the envelopes. */
function stallingFans(
  house: House,
  description: NetworkDescription,
  links: readonly HouseLink[],
): StallingFans | undefined {
  const places = links.flatMap(({ role }, index) => {
    if (role.kind !== 'device') return [];
    const speeds = house.devices.find(({ id }) => id === role.id)?.speeds ?? [];
    return speeds.some(({ name, everyFlow }) => everyFlow === true && name === role.speed)
      ? [index]
      : [];
  });
  if (places.length === 0) return undefined;
  const withCurve = (link: LinkDescription): LinkDescription => {
    if (link.law.kind !== 'fanCurve') return link;
    const { risingPart: _, ...law } = link.law;
    return { ...link, law };
  };
  return {
    links: places,
    description: {
      ...description,
      links: description.links.map((link, index) =>
        places.includes(index) ? withCurve(link) : link,
      ),
    },
  };
}

/**
 * Works out a weather for a house. Every state of the house in this weather can share it.
 *
 * @param house - the house
 * @param weather - the weather
 * @returns air and wind, in the order of the network's nodes and links
 */
export function houseWeather(house: House, weather: Weather): HouseWeather {
  // The coefficient changes neither the order of links nor what fills their columns.
  const { links, junctions } = housePaths(house, 1);
  const nodes = houseNodes(house, weather, junctions);
  const { outdoorAir, zones, boundaries } = nodes;
  const wind = windOnHouse(house, weather, outdoorAir.densityKgPerM3);
  return {
    name: weather.name,
    outdoorAir,
    zoneAir: nodeAir(zones),
    boundaryAir: nodeAir(boundaries),
    boundaryPressuresPa: Float64Array.from(boundaries, (b, i) => wind[i] ?? b.pressurePa),
    columnDensityKgPerM3: Float64Array.from(
      withColumns(links, nodes),
      ({ description }) => (description.columnAir ?? outdoorAir).densityKgPerM3,
    ),
  };
}

/**
 * The overrides that make a compiled house stand in one state, weather and airtightness case.
 *
 * @param compiled - the compiled house
 * @param situation - state, weather as {@link houseWeather} gives it, index of the airtightness case, and the
 * direction assumed for each of `twoStateLinks`; upward, with the air of the lower end, when absent
 * @returns what runs, and the scenario for the network
 */
export function houseScenario(
  compiled: CompiledHouse,
  situation: {
    readonly state: OperatingState;
    readonly weather: HouseWeather;
    readonly airtightnessCase: number;
    readonly columns?: readonly ('upward' | 'downward')[];
  },
): HouseScenario {
  const { house, links, leakage } = compiled;
  const { state, airtightnessCase, columns = [] } = situation;
  const { name: _, ...air } = situation.weather;
  const columnDensityKgPerM3 = Float64Array.from(air.columnDensityKgPerM3);
  columnDensities(compiled, situation).forEach(({ index, ...density }, i) => {
    columnDensityKgPerM3[index] = density[columns[i] ?? 'upward'];
  });
  const followed = followInterlocks(house, state);
  const first = leakage[0]?.coefficientM3PerSPaN ?? 1;
  const leakScale = (leakage[airtightnessCase]?.coefficientM3PerSPaN ?? first) / first;
  const standing = { state, followed, leakScale, house };
  return {
    followed,
    scenario: {
      ...air,
      zoneAir: withFlues(compiled, situation),
      columnDensityKgPerM3,
      linkScale: Float64Array.from(links, (link) => linkScale(link, standing)),
    },
  };
}

/** Air of zones and junctions, the junctions of warm flues with their gas. */
function withFlues(
  { network, ...compiled }: CompiledHouse,
  situation: { readonly state: OperatingState; readonly weather: HouseWeather },
): NodeAir {
  const { zoneAir } = situation.weather;
  const { junctionAir } = flueAir({ network, ...compiled }, situation);
  if (junctionAir.size === 0) return zoneAir;
  const temperatureC = Float64Array.from(zoneAir.temperatureC);
  const densityKgPerM3 = Float64Array.from(zoneAir.densityKgPerM3);
  for (const [junction, air] of junctionAir) {
    const index = network.zoneIndex.get(junction) ?? -1;
    temperatureC[index] = air.temperatureC;
    densityKgPerM3[index] = air.densityKgPerM3;
  }
  return { temperatureC, densityKgPerM3 };
}

/** The links with the air of their columns, in one weather. */
function withColumns(links: readonly HouseLink[], nodes: HouseNodes): readonly HouseLink[] {
  const airOf = new Map([...nodes.zones, ...nodes.boundaries].map(({ id, air }) => [id, air]));
  return links.map((link) => {
    if (link.columnOf === undefined) return link;
    const columnAir = airOf.get(link.columnOf) ?? nodes.outdoorAir;
    return { ...link, description: { ...link.description, columnAir } };
  });
}

function nodeAir(nodes: readonly { readonly air: AirState }[]): NodeAir {
  return {
    temperatureC: Float64Array.from(nodes, (node) => node.air.temperatureC),
    densityKgPerM3: Float64Array.from(nodes, (node) => node.air.densityKgPerM3),
  };
}

function linkScale(
  link: HouseLink,
  of: {
    readonly state: OperatingState;
    readonly followed: FollowedState;
    readonly leakScale: number;
    readonly house: House;
  },
): number {
  const { role } = link;
  const { running, openMakeUp, openDampers } = of.followed;
  switch (role.kind) {
    case 'leak':
      return of.leakScale;
    case 'opening':
      return stands(of.house, role.id, of.state) === 'open' ? 1 : 0;
    case 'door':
      if (role.position === 'always') return 1;
      return stands(of.house, role.id, of.state) === role.position ? 1 : 0;
    case 'device':
      return running.get(role.id) === role.speed ? 1 : 0;
    case 'device off':
      return running.has(role.id) ? 0 : 1;
    case 'make-up':
      return openMakeUp.has(role.id) === (role.damper === 'open') ? 1 : 0;
    case 'ventilator':
      return running.get(role.id) === role.mode ? 1 : 0;
    case 'flue': {
      const stage = of.state.firing?.[role.id] ?? 'off';
      return role.stages?.includes(stage) === false ? 0 : 1;
    }
    case 'air handler':
      return running.has(role.id) === (role.stand === 'running') ? 1 : 0;
    case 'part': {
      if (role.when === 'always') return 1;
      const open = openDampers.has(role.id) || openMakeUp.has(role.id);
      return open === (role.when === 'open') ? 1 : 0;
    }
  }
}

/** How a door or an opening stands; what cannot be shut stands open. */
function stands(house: House, id: string, { doors }: OperatingState): 'open' | 'shut' {
  const door = [...house.doors, ...house.openings].find((each) => each.id === id);
  return doors[id] ?? door?.baselinePosition ?? 'open';
}

/** What only a house that was put together by hand can lack. */
function missing(what: 'airtightness' | 'weather'): Issue {
  return {
    code: 'house.not-a-network',
    severity: 'error',
    path: [what],
    parameters: { problem: `no ${what}` },
  };
}

function flowUnknown(house: House): (item: string) => Issue {
  return (item) => ({
    code: 'airtightness.flow-unknown',
    severity: 'error',
    path: pathOf(house.airtightness.origin),
    parameters: { item },
  });
}

function nothingLeft(house: House, row: RemainingLeakage): Issue {
  return {
    code: 'airtightness.nothing-left',
    severity: 'error',
    path: pathOf(house.airtightness.origin),
    parameters: {
      case: row.name,
      tested: flowInWords(row.testedFlowM3PerS),
      modelled: flowInWords(row.modelledFlowM3PerS),
    },
  };
}

function flowInWords(flowM3PerS: number): string {
  const print = (system: 'us' | 'si'): string =>
    formatQuantity(flowM3PerS, 'volumeFlow', { system });
  return `${print('us')} (${print('si')})`;
}

function pathOf(origin: string): readonly string[] {
  return origin.split('.');
}
