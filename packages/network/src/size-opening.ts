import { flowAt } from '@evendraft/airflow';
import type { Balance, UnsolvedBalance } from './balance.js';
import type { BuiltNetwork } from './built-network.js';
import { builtNetworkOf } from './internal/built-network-of.js';
import { indexDescription } from './internal/index-description.js';
import type { LinkDescription, NetworkDescription } from './network-description.js';
import type { NodeAir, Scenario } from './scenario.js';
import { solveNetwork } from './solve-network.js';
import { UnknownIdError } from './unknown-id-error.js';

/** What opening is wanted, and what for. */
export interface OpeningTask {
  /** The zone whose pressure is to be held. */
  readonly zoneId: string;
  /** Its pressure, quoted at its own height [Pa]. */
  readonly targetPa: number;
  /** The opening, a link at that zone; its own factor in the scenario is ignored. */
  readonly linkId: string;
  readonly scenario?: Scenario;
}

/** The size of an opening that holds a zone at its target. */
export interface SizedOpening {
  readonly status: 'solved';
  /** Factor on the link's flow as described; 0 where nothing is needed [-]. */
  readonly scale: number;
  /** Mass flow through it, positive from → to [kg/s]. */
  readonly massFlowKgPerS: number;
  /** Pressure difference at it, `from` minus `to` [Pa]. */
  readonly pressureDifferencePa: number;
  /** The other zones at that state. */
  readonly balance: Balance;
}

/** An opening that no size makes right, or a network without a balance. */
export type OpeningResult =
  | SizedOpening
  | { readonly status: 'wrong-direction'; readonly massFlowKgPerS: number; readonly hint: string }
  | UnsolvedBalance;

/**
 * Sizes an opening by one solve: the zone is made a boundary at its target, the rest is solved, and the air
 * that the zone then lacks is what the opening must carry.
 *
 * @param network - a built network that contains the opening; one end of it is the zone
 * @param task - zone, target and opening
 * @returns the factor on the opening's flow, or why no opening can do it
 */
export function sizeOpening(network: BuiltNetwork, task: OpeningTask): OpeningResult {
  const { description } = network;
  const zone = network.zoneIndex.get(task.zoneId);
  const link = network.linkIndex.get(task.linkId);
  if (zone === undefined) throw new UnknownIdError(task.zoneId);
  const opening = link === undefined ? undefined : description.links[link];
  if (link === undefined || opening === undefined) throw new UnknownIdError(task.linkId);

  const held = holdZone(network, { zone, link, task });
  const result = solveNetwork(held.network, held.scenario);
  if (result.status !== 'solved') return result;
  let netOutflow = 0;
  description.links.forEach((other, index) => {
    if (other.from === task.zoneId) netOutflow += result.links.massFlowKgPerS[index]!;
    if (other.to === task.zoneId) netOutflow -= result.links.massFlowKgPerS[index]!;
  });

  const massFlowKgPerS = opening.to === task.zoneId ? netOutflow : -netOutflow;
  const pressureDifferencePa = result.links.pressureDifferencePa[link]!;
  const unit = unitFlow(held, opening, pressureDifferencePa);
  if (massFlowKgPerS === 0) {
    return { status: 'solved', scale: 0, massFlowKgPerS, pressureDifferencePa, balance: result };
  }
  if (!(massFlowKgPerS * unit > 0)) {
    return {
      status: 'wrong-direction',
      massFlowKgPerS,
      hint: `at ${task.targetPa} Pa ${task.zoneId} needs ${massFlowKgPerS} kg/s through ${task.linkId}, which would carry ${unit} kg/s per unit of size`,
    };
  }
  const scale = massFlowKgPerS / unit;
  return { status: 'solved', scale, massFlowKgPerS, pressureDifferencePa, balance: result };
}

interface HeldZone {
  readonly network: BuiltNetwork;
  readonly scenario: Scenario;
}

interface Place {
  readonly zone: number;
  readonly link: number;
  readonly task: OpeningTask;
}

/** The network with one zone as a boundary, the opening removed; zones may be none. */
function holdZone({ description }: BuiltNetwork, { zone, link, task }: Place): HeldZone {
  const { zones, boundaries, links } = description;
  const scenario = task.scenario ?? {};
  const moved = zones[zone]!;
  const held: NetworkDescription = {
    ...description,
    zones: zones.filter((_, index) => index !== zone),
    boundaries: [...boundaries, { ...moved, pressurePa: task.targetPa }],
  };
  const pressures =
    scenario.boundaryPressuresPa ?? boundaries.map((boundary) => boundary.pressurePa);
  const scale = scenario.linkScale?.slice() ?? new Float64Array(links.length).fill(1);
  scale[link] = 0;

  const { zoneAir, boundaryAir, ...rest } = scenario;
  const zonesAir = zoneAir ?? describedAir(zones);
  const boundariesAir = boundaryAir ?? describedAir(boundaries);
  return {
    network: builtNetworkOf(held, indexDescription(held)),
    scenario: {
      ...rest,
      linkScale: scale,
      boundaryPressuresPa: Float64Array.of(...pressures, task.targetPa),
      zoneAir: mapAir(zonesAir, (values) => values.filter((_, place) => place !== zone)),
      boundaryAir: {
        temperatureC: Float64Array.of(...boundariesAir.temperatureC, zonesAir.temperatureC[zone]!),
        densityKgPerM3: Float64Array.of(
          ...boundariesAir.densityKgPerM3,
          zonesAir.densityKgPerM3[zone]!,
        ),
      },
    },
  };
}

function unitFlow({ network, scenario }: HeldZone, opening: LinkDescription, x: number): number {
  const airOf = (id: string) => {
    const zone = network.zoneIndex.get(id);
    const air = zone === undefined ? scenario.boundaryAir! : scenario.zoneAir!;
    const place = zone ?? network.boundaryIndex.get(id)!;
    return { temperatureC: air.temperatureC[place]!, densityKgPerM3: air.densityKgPerM3[place]! };
  };
  const air = { from: airOf(opening.from), to: airOf(opening.to) };
  return flowAt(opening.law, x, air).massFlowKgPerS;
}

function describedAir(
  nodes: readonly { readonly air: { temperatureC: number; densityKgPerM3: number } }[],
): NodeAir {
  return {
    temperatureC: Float64Array.from(nodes, ({ air }) => air.temperatureC),
    densityKgPerM3: Float64Array.from(nodes, ({ air }) => air.densityKgPerM3),
  };
}

function mapAir(air: NodeAir, change: (values: Float64Array) => Float64Array): NodeAir {
  return {
    temperatureC: change(air.temperatureC),
    densityKgPerM3: change(air.densityKgPerM3),
  };
}
