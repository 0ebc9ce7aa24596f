import type { FanCurveDescription } from '@evendraft/airflow';
import { checkFlowLaw } from '@evendraft/airflow';
import type { Balance, SolveResult } from '../balance.js';
import { buildNetwork } from '../build-network.js';
import type { BuiltNetwork } from '../built-network.js';
import type {
  BoundaryDescription,
  LinkDescription,
  NetworkDescription,
  ZoneDescription,
} from '../network-description.js';
import type { NetworkIssue } from '../network-issue.js';
import type { NodeAir, Scenario } from '../scenario.js';
import { defaultMaximumIterations, solveNetwork } from '../solve-network.js';
import { asBatch, leastScale } from './scenario-rows.js';
import { setScenario } from './set-scenario.js';
import { solveRow } from './solve-row.js';
import type { RisingCurve } from './rising-curve.js';
import { risingCurve } from './rising-curve.js';

/**
 * A network in which each fan whose curve rises is replaced by a flow that is set from outside, and in which both
 * ends of a column between two zones can be given airs and pressures of their own, where bounds are wanted.
 */
export interface FreedNetwork {
  readonly fans: readonly FreedFan[];
  /** One solve with what is set, in the links of the description. */
  solve(
    setting: FreedSetting & { readonly enclosure: boolean; readonly start?: Float64Array },
  ): SolveResult;
  /** Only the pressures of the zones, from a start if there is one [Pa]; undefined where nothing balances. */
  pressures(setting: FreedSetting, start?: Float64Array): Float64Array | undefined;
  /** What the opening of each link sees with no pressure in the zones [Pa]. */
  drivesPa(columnDensityKgPerM3: Float64Array): Float64Array;
}

/** A fan whose flow is set from outside. */
export interface FreedFan {
  /** Place of its link in the description. */
  readonly link: number;
  readonly id: string;
  readonly curve: RisingCurve;
  /** Place of the zone it blows into; −1 where that is a boundary. */
  readonly into: number;
  /** A damper stops reverse flow. */
  readonly blocked: boolean;
}

/** What is set for one solve. */
export interface FreedSetting {
  /** Flow that each fan takes from its `from` [m3/s]. */
  readonly taken: readonly number[];
  /** Flow that each fan gives to its `to`; like `taken`, but for bounds [m3/s]. */
  readonly given: readonly number[];
  /** By link of the description [kg/m3]. */
  readonly columnDensityKgPerM3: Float64Array;
  /** Links of the description that are removed. */
  readonly removed: ReadonlySet<number>;
  /** Columns between two zones that are cut in two, for bounds. */
  readonly cut?: readonly CutColumn[];
}

/** A column between two zones whose ends are solved apart from each other. */
export interface CutColumn {
  /** Place of its link in the description. */
  readonly link: number;
  /** What the zone at its beginning sees. */
  readonly leaving: ColumnEnd;
  /** What the zone at its end sees. */
  readonly entering: ColumnEnd;
}

/** A column as the zone at one of its ends sees it. */
export interface ColumnEnd {
  readonly densityKgPerM3: number;
  /** Pressure of the zone at the other end [Pa]. */
  readonly beyondPa: number;
}

const limits = { tolerance: 1e-11, maximumIterations: defaultMaximumIterations };
/** The two links that take and give a fan's flow, in each direction. */
const partsOfAFan = 4;
/** The two halves of a column that may be cut. */
const halves = 2;
const unitFlow = { kind: 'fixedFlow', massFlowKgPerS: 1 } as const;

/**
 * Frees the fans of a description whose curves rise.
 *
 * Each is switched off; two flows, one out of its `from` and one into its `to`, stand for it. Their factors
 * change without rebuilding, and apart from each other where bounds are wanted.
 */
export function freeRisingFans(
  description: NetworkDescription,
  scenario: Scenario,
): FreedNetwork | { readonly issues: readonly NetworkIssue[] } {
  const extended = extendedOf(description);
  if ('issues' in extended) return extended;
  const { network, rising, columns } = extended;
  const { links, zones, boundaries } = description;
  const scales = links.map((_, link) => scenario.linkScale?.[link] ?? 1);
  const all = extendedScenario(extended, description, scenario);
  const densityOf = (id: string): number => {
    const zone = network.zoneIndex.get(id);
    if (zone !== undefined) {
      return scenario.zoneAir?.densityKgPerM3[zone] ?? zones[zone]!.air.densityKgPerM3;
    }
    const boundary = network.boundaryIndex.get(id)!;
    return (
      scenario.boundaryAir?.densityKgPerM3[boundary] ?? boundaries[boundary]!.air.densityKgPerM3
    );
  };
  const used = rising
    .map((placed, place) => ({ ...placed, place }))
    .filter(({ index }) => scales[index]! > 0);
  const massFlows = used.map(({ link, index }) => {
    const forward = scales[index]! * densityOf(link.from);
    const backward = scales[index]! * densityOf(link.to);
    return (flow: number): number => flow * (flow > 0 ? forward : backward);
  });
  const firstHalf = links.length + partsOfAFan * rising.length;
  const halfOf = new Map(columns.map(({ index }, k) => [index, firstHalf + halves * k]));

  const scenarioOf = ({
    taken,
    given,
    columnDensityKgPerM3,
    removed,
    cut = [],
  }: FreedSetting): Scenario => {
    const scale = new Float64Array(firstHalf + halves * columns.length);
    scales.forEach((value, link) => (scale[link] = removed.has(link) ? 0 : value));
    for (const { index } of rising) scale[index] = 0;
    used.forEach(({ place }, fan) => {
      const out = massFlows[fan]!(taken[fan]!);
      const into = massFlows[fan]!(given[fan]!);
      const parts = [out, -out, into, -into].map((part) => (part >= leastScale ? part : 0));
      scale.set(parts, links.length + partsOfAFan * place);
    });
    all.columnDensityKgPerM3.set(columnDensityKgPerM3);
    for (const { link, leaving, entering } of cut) {
      const half = halfOf.get(link)!;
      scale.fill(scale[link]!, half, half + halves);
      scale[link] = 0;
      [leaving, entering].forEach(({ densityKgPerM3, beyondPa }, end) => {
        all.columnDensityKgPerM3[half + end] = densityKgPerM3;
        all.boundaryPressuresPa[boundaries.length + 1 + half - firstHalf + end] = beyondPa;
      });
    }
    return { ...all, linkScale: scale };
  };

  return {
    fans: used.map(({ link, index }) => {
      const law = link.law as FanCurveDescription;
      return {
        link: index,
        id: link.id,
        curve: risingCurve(law),
        into: network.zoneIndex.get(link.to) ?? -1,
        blocked: law.beyondShutOff === 'blocked',
      };
    }),
    solve({ enclosure, start, ...setting }) {
      const result = solveNetwork(network, scenarioOf(setting), {
        ...{ ...limits, enclosure },
        ...(start && { start }),
      });
      if (result.status !== 'solved') return result;
      const { given } = setting;
      const flows = new Map(used.map(({ index }, fan) => [index, massFlows[fan]!(given[fan]!)]));
      return withoutParts(description, result, { flows, densityOf });
    },
    pressures(setting, start) {
      const { kernel } = network;
      start?.forEach((pressure, zone) => (kernel.pressure[kernel.placeOfZone[zone]!] = pressure));
      const status = solveRow(kernel, {
        batch: asBatch(scenarioOf(setting)),
        row: 0,
        limits,
        started: start !== undefined,
      });
      if (status !== 'solved') return undefined;
      return Float64Array.from(kernel.placeOfZone, (place) => kernel.pressure[place]!);
    },
    drivesPa(columnDensityKgPerM3) {
      const { kernel } = network;
      const none = used.map(() => 0);
      const setting = { taken: none, given: none, removed: new Set<number>() };
      setScenario(kernel, asBatch(scenarioOf({ ...setting, columnDensityKgPerM3 })), 0);
      const { from, to, zoneCount, pressure, drivePa } = kernel;
      const known = (node: number): number => (node < zoneCount ? 0 : pressure[node]!);
      return Float64Array.from(links, (_, link) => {
        return drivePa[link]! + known(from[link]!) - known(to[link]!);
      });
    },
  };
}

/** A fan whose rise grows with its flow somewhere, and that asks for no envelope. */
export function isRisingFan({ law }: LinkDescription): boolean {
  return (
    law?.kind === 'fanCurve' &&
    checkFlowLaw(law).some(
      ({ code, severity }) => code === 'RisingFanCurve' && severity === 'error',
    )
  );
}

interface PlacedLink {
  readonly link: LinkDescription;
  readonly index: number;
}

/** A network with the parts of its fans and the halves of its columns behind its own links. */
interface ExtendedNetwork {
  readonly network: BuiltNetwork;
  /** Fans whose curves rise. */
  readonly rising: readonly PlacedLink[];
  /** Columns between two zones. */
  readonly columns: readonly PlacedLink[];
}

const datum = '@datum';

/** A description is searched again in every state of a house, and building takes longer than a solve. */
const extensions = new WeakMap<
  NetworkDescription,
  ExtendedNetwork | { readonly issues: readonly NetworkIssue[] }
>();

function extendedOf(
  description: NetworkDescription,
): ExtendedNetwork | { readonly issues: readonly NetworkIssue[] } {
  const known = extensions.get(description);
  if (known !== undefined) return known;
  const zones = new Map(description.zones.map((zone) => [zone.id, zone]));
  const placed = description.links.map((link, index) => ({ link, index }));
  const rising = placed.filter(({ link }) => isRisingFan(link));
  const columns = placed.filter(
    ({ link }) => link.fromHeightM !== link.toHeightM && zones.has(link.from) && zones.has(link.to),
  );
  const built = buildNetwork(extended(description, { rising, columns, zones }));
  const made =
    built.status === 'rejected'
      ? { issues: built.issues }
      : { network: built.network, rising, columns };
  extensions.set(description, made);
  return made;
}

function extended(
  description: NetworkDescription,
  {
    rising,
    columns,
    zones,
  }: Omit<ExtendedNetwork, 'network'> & {
    readonly zones: ReadonlyMap<string, ZoneDescription>;
  },
): NetworkDescription {
  const links = description.links.map((link) =>
    isRisingFan(link) ? { ...link, law: unitFlow } : link,
  );
  const parts = rising.flatMap(({ link, index }) =>
    [
      [link.from, datum],
      [datum, link.from],
      [datum, link.to],
      [link.to, datum],
    ].map(([from, to], part) => ({
      ...{ id: `${datum} ${index} ${part}`, origin: link.origin, from: from!, to: to! },
      ...{ fromHeightM: 0, toHeightM: 0, law: unitFlow },
    })),
  );
  // Each half ends at a stand-in for the zone beyond, whose pressure is set from outside.
  const beyond = (id: string, end: string): BoundaryDescription => ({
    ...zones.get(id)!,
    id: `${datum} ${end}`,
    pressurePa: 0,
  });
  const cuts = columns.map(({ link, index }) => ({
    boundaries: [beyond(link.to, `to ${index}`), beyond(link.from, `from ${index}`)],
    links: [
      { ...link, id: `${datum} ${index} leaving`, to: `${datum} to ${index}` },
      { ...link, id: `${datum} ${index} entering`, from: `${datum} from ${index}` },
    ],
  }));
  const place = { id: datum, origin: datum, heightM: 0, pressurePa: 0 };
  return {
    ...description,
    boundaries: [
      ...description.boundaries,
      { ...place, air: description.outdoorAir },
      ...cuts.flatMap((cut) => cut.boundaries),
    ],
    links: [...links, ...parts, ...cuts.flatMap((cut) => cut.links)],
  };
}

/** The scenario with numbers for the datum, the parts of the fans and the halves of the columns. */
function extendedScenario(
  { network, rising, columns }: ExtendedNetwork,
  { zones, boundaries, links, outdoorAir }: NetworkDescription,
  scenario: Scenario,
): Scenario & Required<Pick<Scenario, 'columnDensityKgPerM3' | 'boundaryPressuresPa'>> {
  const { boundaryPressuresPa, boundaryAir, linkOffsetPa } = scenario;
  const parts = partsOfAFan * rising.length;
  const linkCount = links.length + parts + halves * columns.length;
  const air = scenario.outdoorAir ?? outdoorAir;
  const beyond = columns.flatMap(({ link: { from, to } }) => [to, from]);
  const zoneValue = (value: keyof NodeAir, id: string): number => {
    const zone = network.zoneIndex.get(id)!;
    return scenario.zoneAir?.[value][zone] ?? zones[zone]!.air[value];
  };
  const boundaryValues = (value: keyof NodeAir): Float64Array =>
    Float64Array.of(
      ...boundaries.map((boundary, k) => boundaryAir?.[value][k] ?? boundary.air[value]),
      air[value],
      ...beyond.map((id) => zoneValue(value, id)),
    );
  return {
    ...scenario,
    columnDensityKgPerM3: new Float64Array(linkCount).fill(air.densityKgPerM3),
    boundaryPressuresPa: Float64Array.of(
      ...boundaries.map(({ pressurePa }, k) => boundaryPressuresPa?.[k] ?? pressurePa),
      0,
      ...beyond.map(() => 0),
    ),
    boundaryAir: {
      temperatureC: boundaryValues('temperatureC'),
      densityKgPerM3: boundaryValues('densityKgPerM3'),
    },
    ...(linkOffsetPa && {
      linkOffsetPa: Float64Array.of(
        ...linkOffsetPa,
        ...new Float64Array(parts),
        ...columns.flatMap(({ index }) => [linkOffsetPa[index]!, linkOffsetPa[index]!]),
      ),
    }),
  };
}

/** A balance in the links of the description, with the fans' own flows. */
function withoutParts(
  { links }: NetworkDescription,
  balance: Balance,
  {
    flows,
    densityOf,
  }: {
    readonly flows: ReadonlyMap<number, number>;
    readonly densityOf: (id: string) => number;
  },
): Balance {
  const own = (values: Float64Array): Float64Array => values.slice(0, links.length);
  const merged = {
    massFlowKgPerS: own(balance.links.massFlowKgPerS),
    forwardKgPerS: own(balance.links.forwardKgPerS),
    backwardKgPerS: own(balance.links.backwardKgPerS),
    volumeFlowM3PerS: own(balance.links.volumeFlowM3PerS),
    pressureDifferencePa: own(balance.links.pressureDifferencePa),
  };
  for (const [link, flow] of flows) {
    const { from, to } = links[link]!;
    merged.massFlowKgPerS[link] = flow;
    merged.forwardKgPerS[link] = Math.max(flow, 0);
    merged.backwardKgPerS[link] = Math.max(-flow, 0);
    merged.volumeFlowM3PerS[link] = flow / densityOf(flow > 0 ? from : to);
  }
  const { worstLink } = balance.proof;
  const part = worstLink?.startsWith(`${datum} `) ? Number(worstLink.split(' ')[1]) : undefined;
  return {
    ...balance,
    links: merged,
    proof: {
      ...balance.proof,
      worstLink: part === undefined ? worstLink : links[part]!.id,
    },
  };
}
