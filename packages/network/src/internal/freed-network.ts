import type { FanCurveDescription } from '@evendraft/airflow';
import { checkFlowLaw } from '@evendraft/airflow';
import type { Balance, SolveResult } from '../balance.js';
import { buildNetwork } from '../build-network.js';
import type { LinkDescription, NetworkDescription } from '../network-description.js';
import type { NetworkIssue } from '../network-issue.js';
import type { Scenario } from '../scenario.js';
import { solveNetwork } from '../solve-network.js';
import { leastScale } from './scenario-rows.js';
import type { RisingCurve } from './rising-curve.js';
import { risingCurve } from './rising-curve.js';

/** A network in which each fan whose curve rises is replaced by a flow that is set from outside. */
export interface FreedNetwork {
  readonly fans: readonly FreedFan[];
  /** One solve with what is set, in the links of the description. */
  solve(setting: FreedSetting): SolveResult;
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
  readonly enclosure: boolean;
}

/** The two links that take and give a fan's flow, in each direction. */
const partsOfAFan = 4;
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
  const { links, zones, boundaries } = description;
  const scales = links.map((_, link) => scenario.linkScale?.[link] ?? 1);
  const rising = links
    .map((link, index) => ({ link, index }))
    .filter(({ link }) => isRisingFan(link));
  const used = rising.filter(({ index }) => scales[index]! > 0);
  const built = buildNetwork(extended(description, used));
  if (built.status === 'rejected') return { issues: built.issues };

  const { network } = built;
  const all = extendedScenario(description, scenario, used.length);
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
  const massFlows = used.map(({ link, index }) => {
    const forward = scales[index]! * densityOf(link.from);
    const backward = scales[index]! * densityOf(link.to);
    return (flow: number): number => flow * (flow > 0 ? forward : backward);
  });

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
    solve({ taken, given, columnDensityKgPerM3, removed, enclosure }) {
      const scale = Float64Array.from({ length: links.length + partsOfAFan * used.length });
      scales.forEach((value, link) => (scale[link] = removed.has(link) ? 0 : value));
      for (const { index } of rising) scale[index] = 0;
      used.forEach((_, fan) => {
        const out = massFlows[fan]!(taken[fan]!);
        const into = massFlows[fan]!(given[fan]!);
        const parts = [out, -out, into, -into].map((part) => (part >= leastScale ? part : 0));
        scale.set(parts, links.length + partsOfAFan * fan);
      });
      all.columnDensityKgPerM3.set(columnDensityKgPerM3);
      const result = solveNetwork(
        network,
        { ...all, linkScale: scale },
        { tolerance: 1e-11, enclosure },
      );
      if (result.status !== 'solved') return result;
      const flows = new Map(used.map(({ index }, fan) => [index, massFlows[fan]!(given[fan]!)]));
      return withoutParts(description, result, { flows, densityOf });
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

const datum = '@datum';

function extended(
  description: NetworkDescription,
  used: readonly PlacedLink[],
): NetworkDescription {
  const links = description.links.map((link) =>
    isRisingFan(link) ? { ...link, law: unitFlow } : link,
  );
  const parts = used.flatMap(({ link, index }) =>
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
  const place = { id: datum, origin: datum, heightM: 0, pressurePa: 0 };
  return {
    ...description,
    boundaries: [...description.boundaries, { ...place, air: description.outdoorAir }],
    links: [...links, ...parts],
  };
}

/** The scenario with numbers for the datum and for the parts of the fans. */
function extendedScenario(
  { links, outdoorAir }: NetworkDescription,
  scenario: Scenario,
  fans: number,
): Scenario & { readonly columnDensityKgPerM3: Float64Array } {
  const { boundaryPressuresPa, boundaryAir, linkOffsetPa } = scenario;
  const linkCount = links.length + partsOfAFan * fans;
  const air = scenario.outdoorAir ?? outdoorAir;
  return {
    ...scenario,
    columnDensityKgPerM3: new Float64Array(linkCount).fill(air.densityKgPerM3),
    ...(boundaryPressuresPa && { boundaryPressuresPa: Float64Array.of(...boundaryPressuresPa, 0) }),
    ...(boundaryAir && {
      boundaryAir: {
        temperatureC: Float64Array.of(...boundaryAir.temperatureC, air.temperatureC),
        densityKgPerM3: Float64Array.of(...boundaryAir.densityKgPerM3, air.densityKgPerM3),
      },
    }),
    ...(linkOffsetPa && {
      linkOffsetPa: Float64Array.from({ length: linkCount }, (_, link) => linkOffsetPa[link] ?? 0),
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
