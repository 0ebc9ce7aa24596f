import type { FlowLawDescription } from '@evendraft/airflow';
import type { CompiledHouse } from '@evendraft/house';
import { buildNetwork, type BuiltNetwork, type NodeAir, type Scenario } from '@evendraft/network';

/** The network of a house from which its flues are cut, each with a flow in its stead. */
export interface HouseWithoutFlues {
  readonly network: BuiltNetwork;
  /** Places of its zones and links in the network of the house. */
  readonly zones: readonly number[];
  readonly links: readonly number[];
  /** Appliances whose flues were cut, in the order of their flows. */
  readonly appliances: readonly string[];
}

/** A flow out of a zone and one into it stand for the flue of an appliance. */
const partsOfAFlue = 2;
const unitFlow = { kind: 'fixedFlow', massFlowKgPerS: 1e-4 } as const satisfies FlowLawDescription;
/** A factor on a link is 0 or at least this [-]; the flow that is lost is far below any residual. */
const leastFactor = 1e-12;

/**
 * Cuts the flues out of the network of a house, so that the rest can be asked what it does when they take air.
 *
 * @param compiled - the compiled house
 * @returns the rest, or ids of zones without another way for air, which is then why it has no balance
 */
export function houseWithoutFlues(
  compiled: CompiledHouse,
): HouseWithoutFlues | { readonly withoutAir: readonly string[] } {
  const { network, links, house } = compiled;
  const { description } = network;
  const isFlue = links.map(({ role }) => role.kind === 'flue');
  const cut = new Set(
    compiled.junctions
      .map(({ id }) => id)
      .filter((id) =>
        links.some(({ description: { from, to } }, i) => isFlue[i] && (from === id || to === id)),
      ),
  );
  const zones = description.zones.flatMap(({ id }, i) => (cut.has(id) ? [] : [i]));
  const kept = description.links.flatMap((_, i) => (isFlue[i] === true ? [] : [i]));
  const flues = house.appliances.filter(({ flue }) => flue !== undefined);
  const parts = flues.flatMap(({ id, zone, origin }) => {
    const top = topNode(compiled, id);
    return [
      [zone, top],
      [top, zone],
    ].map(([from, to], part) => ({
      ...{ id: `@flue ${id} ${part}`, origin, from: from!, to: to! },
      ...{ fromHeightM: 0, toHeightM: 0, law: unitFlow },
    }));
  });
  const built = buildNetwork({
    ...description,
    zones: zones.map((i) => description.zones[i]!),
    links: [...kept.map((i) => description.links[i]!), ...parts],
  });
  if (built.status === 'rejected') {
    return { withoutAir: built.issues.map(({ origin }) => origin) };
  }
  return { network: built.network, zones, links: kept, appliances: flues.map(({ id }) => id) };
}

/**
 * The place where the flue of an appliance ends, through the chimney of another where it joins one.
 *
 * @param compiled - the compiled house
 * @param appliance - id of the appliance
 * @returns id of a zone or boundary
 */
export function topNode({ house, links }: CompiledHouse, appliance: string): string {
  const owner = house.appliances.find(({ id }) => id === appliance)?.flue?.joins ?? appliance;
  const last = links.findLast(
    ({ role }) =>
      role.kind === 'flue' &&
      role.id === owner &&
      (role.part === 'chimney' || role.part === 'vent' || role.part === 'shut vent'),
  );
  return last?.description.to ?? '';
}

/**
 * The scenario of the house for the network from which its flues are cut.
 *
 * @param rest - that network
 * @param scenario - of the whole house
 * @param flows - by appliance with a flue, out of its room [kg/s]
 * @returns the same weather and state, with the flows
 */
export function scenarioWithoutFlues(
  rest: HouseWithoutFlues,
  scenario: Scenario,
  flows: readonly number[],
): Scenario {
  const { zones, links } = rest;
  const count = links.length + partsOfAFlue * flows.length;
  const linkScale = new Float64Array(count);
  const columnDensityKgPerM3 = new Float64Array(count).fill(
    scenario.outdoorAir?.densityKgPerM3 ?? 1.2,
  );
  links.forEach((link, i) => {
    linkScale[i] = scenario.linkScale?.[link] ?? 1;
    const density = scenario.columnDensityKgPerM3?.[link];
    if (density !== undefined) columnDensityKgPerM3[i] = density;
  });
  flows.forEach((flow, k) => {
    const factor = Math.abs(flow) / unitFlow.massFlowKgPerS;
    const part = links.length + partsOfAFlue * k + (flow < 0 ? 1 : 0);
    if (factor >= leastFactor) linkScale[part] = factor;
  });
  const { zoneAir, linkOffsetPa: _, ...same } = scenario;
  return {
    ...same,
    ...(zoneAir === undefined ? {} : { zoneAir: airOf(zoneAir, zones) }),
    linkScale,
    columnDensityKgPerM3,
  };
}

function airOf({ temperatureC, densityKgPerM3 }: NodeAir, zones: readonly number[]): NodeAir {
  return {
    temperatureC: Float64Array.from(zones, (zone) => temperatureC[zone]!),
    densityKgPerM3: Float64Array.from(zones, (zone) => densityKgPerM3[zone]!),
  };
}
