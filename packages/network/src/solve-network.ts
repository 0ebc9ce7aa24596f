import { nearZeroWidthPa } from '@evendraft/airflow';
import type { Balance, BalanceProof, SolveResult, UnsolvedBalance } from './balance.js';
import type { BuiltNetwork } from './built-network.js';
import type { Enclosure } from './internal/enclosure.js';
import { enclose } from './internal/enclosure.js';
import { linkFlows } from './internal/link-flows.js';
import type { GraphVerdict, Iteration } from './internal/kernel.js';
import { asBatch, columnsOf, lengthProblem, rowProblem } from './internal/scenario-rows.js';
import { solveRow } from './internal/solve-row.js';
import { residualYardsticks } from './internal/stop-test.js';
import { gatherRounding, sweepLinks } from './internal/sweep.js';
import type { Scenario } from './scenario.js';

/** Residual of every zone over the flow through it, unless asked otherwise [-]. */
export const defaultTolerance = 1e-9;
/** Newton steps, unless asked otherwise. */
export const defaultMaximumIterations = 200;

/** How to solve. */
export interface SolveOptions {
  /** Residual of every zone over the flow through it; 1e-9 when omitted [-]. */
  readonly tolerance?: number;
  /** Newton steps; 200 when omitted. */
  readonly maximumIterations?: number;
  /** Pressures to start from, in the order of the description [Pa]. */
  readonly start?: Float64Array;
  /** Enclose every solution; true when omitted. */
  readonly enclosure?: boolean;
}

/**
 * Finds the pressure of every zone at which its air balances.
 *
 * @param network - a built network
 * @param scenario - what differs from the description
 * @param options - tolerance, iteration limit, start and enclosure
 * @returns a balance with its proof, or the reason why there is none
 */
export function solveNetwork(
  network: BuiltNetwork,
  scenario: Scenario = {},
  options: SolveOptions = {},
): SolveResult {
  const { kernel } = network;
  const batch = asBatch(scenario);
  const columns = columnsOf(kernel, batch);
  const problem =
    lengthProblem(columns, 1) ?? rowProblem(columns, 0) ?? startProblem(network, options.start);
  if (problem !== undefined) {
    return {
      status: 'invalid-scenario',
      zones: [],
      worstZone: undefined,
      iterations: 0,
      hint: problem,
    };
  }
  options.start?.forEach((pressure, zone) => {
    kernel.pressure[kernel.placeOfZone[zone]!] = pressure;
  });
  const status = solveRow(kernel, {
    batch,
    row: 0,
    limits: {
      tolerance: options.tolerance ?? defaultTolerance,
      maximumIterations: options.maximumIterations ?? defaultMaximumIterations,
    },
    started: options.start !== undefined,
  });
  if (status === 'infeasible' || status === 'not-unique') return refused(network);
  const { iteration } = kernel;
  if (status === 'not-converged') return notConverged(network, iteration);

  let enclosure: Enclosure = { radiusPa: undefined, lawSweeps: 0 };
  if (options.enclosure ?? true) {
    enclosure = enclose(kernel);
    sweepLinks(kernel, kernel.pressure);
  }
  const lawSweeps = iteration.lawSweeps + enclosure.lawSweeps;
  gatherRounding(kernel, kernel.pressure);
  const yardsticks = residualYardsticks(kernel, options.tolerance ?? defaultTolerance);
  return balance(network, { iteration: { ...iteration, lawSweeps }, enclosure, yardsticks });
}

function startProblem(network: BuiltNetwork, start: Float64Array | undefined): string | undefined {
  if (start === undefined) return undefined;
  const { zoneCount } = network.kernel;
  if (start.length !== zoneCount) return `start has ${start.length} numbers, it needs ${zoneCount}`;
  const wrong = start.findIndex((value) => !(Math.abs(value) <= 1e9));
  return wrong < 0 ? undefined : `start[${wrong}] is ${start[wrong]}`;
}

function balance(
  network: BuiltNetwork,
  solved: {
    readonly iteration: Iteration;
    readonly enclosure: Enclosure;
    /** Flow against which the residual of each zone is reported, by place [kg/s]. */
    readonly yardsticks: Float64Array;
  },
): Balance {
  const { iteration, enclosure, yardsticks } = solved;
  const { kernel, description } = network;
  const pressuresPa = inDescriptionOrder(network, kernel.pressure);
  return {
    status: 'solved',
    pressuresPa,
    links: linkFlows(kernel),
    proof: {
      iterations: iteration.iterations,
      lawSweeps: iteration.lawSweeps,
      ...residuals(network),
      enclosureRadiusPa: enclosure.radiusPa,
      enclosed: enclosure.radiusPa !== undefined,
      unique: true,
      regularisationPa: regularisation(network),
    },
  };

  function residuals({
    zoneIndex,
  }: BuiltNetwork): Pick<
    BalanceProof,
    'largestRelativeResidual' | 'residualsRelative' | 'worstZone' | 'worstLink'
  > {
    const residualsRelative = new Float64Array(zoneIndex.size);
    let worst = 0;
    for (let zone = 0; zone < residualsRelative.length; zone++) {
      const place = kernel.placeOfZone[zone]!;
      const yardstick = yardsticks[place]!;
      residualsRelative[zone] = yardstick > 0 ? Math.abs(kernel.residual[place]!) / yardstick : 0;
      if (residualsRelative[zone]! > residualsRelative[worst]!) worst = zone;
    }
    const link = greatestLinkAt(network, kernel.placeOfZone[worst]!);
    return {
      largestRelativeResidual: residualsRelative[worst]!,
      residualsRelative,
      worstZone: description.zones[worst]?.id,
      worstLink: link === undefined ? undefined : description.links[link]?.id,
    };
  }
}

function greatestLinkAt({ kernel }: BuiltNetwork, place: number): number | undefined {
  const { activeCount, activeFrom, activeTo, activeLink, links } = kernel;
  const { massFlowKgPerS } = links.state;
  let greatest: number | undefined;
  let size = -1;
  for (let link = 0; link < activeCount; link++) {
    if (activeFrom[link] !== place && activeTo[link] !== place) continue;
    if (Math.abs(massFlowKgPerS[link]!) <= size) continue;
    size = Math.abs(massFlowKgPerS[link]!);
    greatest = activeLink[link]!;
  }
  return greatest;
}

/**
 * The near-zero cubic of a law is its exact curve shifted by at most 0.17 of the width; a shift of one link
 * moves no pressure by more than itself, so the sum over the links this close to zero bounds the effect.
 */
function regularisation({ kernel }: BuiltNetwork): number {
  const {
    activeCount,
    activeLink,
    activeFrom,
    activeTo,
    pressure,
    drivePa,
    links: active,
  } = kernel;
  let links = 0;
  for (let link = 0; link < activeCount; link++) {
    const difference =
      pressure[activeFrom[link]!]! - pressure[activeTo[link]!]! + drivePa[activeLink[link]!]!;
    const close = Math.abs(difference) < nearZeroWidthPa;
    if (close && active.state.slopeKgPerSPa[link]! > 0) links++;
  }
  return 0.17 * nearZeroWidthPa * links;
}

function refused(network: BuiltNetwork): UnsolvedBalance {
  const { verdict, zones = [], lacking }: Partial<GraphVerdict> = network.kernel.verdict ?? {};
  const ids = zoneIds(network, zones);
  const named = ids.join(', ');
  return {
    status: verdict === 'infeasible' ? 'infeasible' : 'not-unique',
    zones: ids,
    worstZone: ids[0],
    iterations: 0,
    hint:
      verdict === 'infeasible'
        ? `the flows of ${named} cannot balance: add ${lacking === 'both' ? 'an inlet and an outlet' : (lacking ?? 'an opening')}, such as a leak to outdoors`
        : `the pressure of ${named} is not determined: add an opening to outdoors or to another zone, or remove the zone`,
  };
}

function notConverged(network: BuiltNetwork, iteration: Iteration): UnsolvedBalance {
  const { kernel } = network;
  let worst = 0;
  for (let place = 0; place < kernel.zoneCount; place++) {
    const size = Math.abs(kernel.residual[place]!) / (kernel.through[place]! + 1e-300);
    if (size > Math.abs(kernel.residual[worst]!) / (kernel.through[worst]! + 1e-300)) worst = place;
  }
  const zones = zoneIds(network, [worst]);
  return {
    status: 'not-converged',
    zones,
    worstZone: zones[0],
    lastIteratePa: inDescriptionOrder(network, kernel.pressure),
    iterations: iteration.iterations,
    hint: `air does not balance at ${zones[0] ?? 'any zone'} after ${iteration.iterations} steps: allow more steps or a wider tolerance, and look for an opening there that is far larger or smaller than its neighbours`,
  };
}

function inDescriptionOrder({ kernel }: BuiltNetwork, byPlace: Float64Array): Float64Array {
  return Float64Array.from(kernel.placeOfZone, (place) => byPlace[place]!);
}

function zoneIds({ kernel, description }: BuiltNetwork, places: readonly number[]): string[] {
  const wanted = new Set(places);
  return description.zones
    .filter((_, zone) => wanted.has(kernel.placeOfZone[zone]!))
    .map((zone) => zone.id);
}
