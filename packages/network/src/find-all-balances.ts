import type { AirState } from '@evendraft/airflow';
import type { Balance, UnsolvedBalance } from './balance.js';
import type { ColumnState, StatedColumn } from './internal/column-states.js';
import { movementOf, stateCombinations, stillColumn } from './internal/column-states.js';
import { descriptionIssues } from './internal/description-issues.js';
import type { FanRoot, SolveBudget } from './internal/fan-roots.js';
import { fanRoots } from './internal/fan-roots.js';
import { freeRisingFans } from './internal/freed-network.js';
import type { NetworkDescription } from './network-description.js';
import type { NetworkIssue } from './network-issue.js';
import type { Scenario } from './scenario.js';
import { UnknownIdError } from './unknown-id-error.js';

/** A link whose column has another air when its flow goes up than when it goes down, such as a chimney. */
export interface TwoStateColumn {
  /** Id of a link; up is from its lower to its higher end. */
  readonly link: string;
  /** Density of the column while air rises through it [kg/m3]. */
  readonly upwardDensityKgPerM3: number;
  /** Density of the column while air comes down through it [kg/m3]. */
  readonly downwardDensityKgPerM3: number;
}

/** What else may have several answers, and how long to look. */
export interface AllBalancesOptions {
  readonly twoState?: readonly TwoStateColumn[];
  /** Solves after which the search ends as not complete; 20,000 when omitted. */
  readonly mostSolves?: number;
}

/** One of several balances. */
export interface RootBalance {
  readonly balance: Balance;
  /** Each fan whose curve rises, with its actual volume flow, positive from → to [m3/s]. */
  readonly fans: readonly { readonly link: string; readonly volumeFlowM3PerS: number }[];
  /** Each two-state column: which way its air moves, and its density [kg/m3]. */
  readonly columns: readonly {
    readonly link: string;
    readonly state: ColumnState;
    readonly densityKgPerM3: number;
  }[];
  /** A small disturbance dies out. */
  readonly stable: boolean;
}

/** Every balance of a network, in rising order of the first fan's flow. */
export interface AllBalances {
  readonly status: 'solved';
  readonly balances: readonly RootBalance[];
  /** Nothing was left in which a balance could still hide. */
  readonly complete: boolean;
}

/** Every balance, or why there is none. */
export type AllBalancesResult =
  | AllBalances
  | { readonly status: 'rejected'; readonly issues: readonly NetworkIssue[] }
  | UnsolvedBalance;

const defaultMostSolves = 20_000;

/**
 * Finds every balance of a network in which fans' curves rise or columns have two states.
 *
 * A fan whose curve rises is replaced by its flow; then the rest has one balance, and boxes of flows are halved
 * until no curve can meet what the rest asks. Each column is tried with the air of upward flow, with the air of
 * downward flow, and at rest with a mixture of both; what is kept flows the way it was assumed. A column at rest
 * whose upward air drives upward is an unstable balance between the two others.
 *
 * @param description - a network; its fan curves may rise
 * @param scenario - what differs from the description; the states replace its densities of their columns
 * @param options - columns of two states, and a ceiling on the number of solves
 * @returns every balance, or the issues, or why nothing balances
 */
export function findAllBalances(
  description: NetworkDescription,
  scenario: Scenario = {},
  options: AllBalancesOptions = {},
): AllBalancesResult {
  const errors = descriptionIssues(description).filter(({ severity }) => severity === 'error');
  if (errors.some(({ code }) => code !== 'RisingFanCurve')) {
    return { status: 'rejected', issues: errors };
  }
  const problem = shapeProblem(description, scenario);
  if (problem !== undefined) {
    const status = 'invalid-scenario';
    return { status, zones: [], worstZone: undefined, iterations: 0, hint: problem };
  }
  const freed = freeRisingFans(description, scenario);
  if ('issues' in freed) return { status: 'rejected', issues: freed.issues };

  const columns = (options.twoState ?? []).map((column) => statedColumn(description, column));
  // Where both airs press alike there is nothing to choose.
  const chosen = columns.filter(
    (column) => column.riseM !== 0 && column.upwardDensityKgPerM3 !== column.downwardDensityKgPerM3,
  );
  const budget: SolveBudget = { left: options.mostSolves ?? defaultMostSolves };
  const balances: RootBalance[] = [];
  let complete = true;
  let unsolved: UnsolvedBalance | undefined;
  for (const states of stateCombinations(chosen.length)) {
    if (budget.left <= 0) {
      complete = false;
      break;
    }
    const densities = columnDensities(description, scenario, columns);
    const removed = new Set<number>();
    chosen.forEach(({ link, downwardDensityKgPerM3 }, k) => {
      if (states[k] === 'downward') densities[link] = downwardDensityKgPerM3;
      if (states[k] === 'still') removed.add(link);
    });
    const settling = { description, scenario, columns, chosen, states, densities };
    const wanted = (balance: Balance): boolean =>
      settle({ flows: [], balance, stable: true }, settling) !== undefined;
    const found = fanRoots(freed, { columnDensityKgPerM3: densities, removed, wanted }, budget);
    // Zones may hang on a column that is assumed at rest; then it cannot be.
    if (found.unsolved === undefined || removed.size === 0) {
      complete &&= found.complete;
      unsolved ??= found.unsolved;
    }
    for (const root of found.roots) {
      const settled = settle(root, settling);
      if (
        settled === undefined ||
        balances.some((other) => isSame(other.balance, settled.balance))
      ) {
        continue;
      }
      const fans = freed.fans.map(({ id, link }) => ({
        link: id,
        volumeFlowM3PerS: settled.balance.links.volumeFlowM3PerS[link]!,
      }));
      balances.push({ ...settled, fans });
    }
  }
  if (unsolved !== undefined && balances.length === 0) return unsolved;
  const firstFlow = ({ fans }: RootBalance): number => fans[0]?.volumeFlowM3PerS ?? 0;
  balances.sort((a, b) => firstFlow(a) - firstFlow(b));
  return { status: 'solved', balances, complete };
}

interface Settling {
  readonly description: NetworkDescription;
  readonly scenario: Scenario;
  readonly columns: readonly StatedColumn[];
  /** Columns whose states matter, and the states assumed. */
  readonly chosen: readonly StatedColumn[];
  readonly states: readonly ColumnState[];
  /** By link, as assumed; a column at rest gets its mixture here [kg/m3]. */
  readonly densities: Float64Array;
}

/** The balance with its columns, if every column moves the way it was assumed; undefined otherwise. */
function settle(
  { balance, stable: fansStable }: FanRoot,
  { description, scenario, columns, chosen, states, densities }: Settling,
): Omit<RootBalance, 'fans'> | undefined {
  let stable = fansStable;
  const differences = balance.links.pressureDifferencePa.slice();
  const settledDensities = densities.slice();
  for (const [k, column] of chosen.entries()) {
    if (states[k] === 'still') {
      const still = stillColumn(column, {
        link: description.links[column.link]!,
        air: airsOf(description, scenario, column.link),
        differencePa: differences[column.link]!,
      });
      if (still === undefined) return undefined;
      stable &&= still.stable;
      differences[column.link] = still.pressureDifferencePa;
      settledDensities[column.link] = still.densityKgPerM3;
    } else {
      const movement = movementOf(balance, column);
      if (movement !== 'still' && movement !== states[k]) return undefined;
    }
  }
  return {
    balance: { ...balance, links: { ...balance.links, pressureDifferencePa: differences } },
    columns: columns.map((column) => ({
      link: description.links[column.link]!.id,
      state: movementOf(balance, column),
      densityKgPerM3: settledDensities[column.link]!,
    })),
    stable,
  };
}

/** Two searches found one balance: a column without flow is at rest whatever was assumed of it. */
function isSame(one: Balance, other: Balance): boolean {
  const alike = (a: Float64Array, b: Float64Array, tolerance: number): boolean =>
    a.every((value, k) => Math.abs(value - b[k]!) <= tolerance);
  const greatest = Math.max(...one.links.massFlowKgPerS.map(Math.abs));
  return (
    alike(one.pressuresPa, other.pressuresPa, 1e-6) &&
    alike(one.links.massFlowKgPerS, other.links.massFlowKgPerS, 1e-6 * greatest)
  );
}

function statedColumn(description: NetworkDescription, column: TwoStateColumn): StatedColumn {
  const link = description.links.findIndex(({ id }) => id === column.link);
  if (link < 0) throw new UnknownIdError(column.link);
  const { fromHeightM, toHeightM } = description.links[link]!;
  const { upwardDensityKgPerM3, downwardDensityKgPerM3 } = column;
  return { link, upwardDensityKgPerM3, downwardDensityKgPerM3, riseM: toHeightM - fromHeightM };
}

/** Densities of all columns, two-state columns taken as if air rose in them [kg/m3]. */
function columnDensities(
  { links, outdoorAir }: NetworkDescription,
  { columnDensityKgPerM3 }: Scenario,
  columns: readonly StatedColumn[],
): Float64Array {
  const densities =
    columnDensityKgPerM3?.slice() ??
    Float64Array.from(links, ({ columnAir }) => (columnAir ?? outdoorAir).densityKgPerM3);
  for (const { link, upwardDensityKgPerM3 } of columns) densities[link] = upwardDensityKgPerM3;
  return densities;
}

/** The airs at both ends of a link. */
function airsOf(
  { links, zones, boundaries }: NetworkDescription,
  { zoneAir, boundaryAir }: Scenario,
  link: number,
): { readonly from: AirState; readonly to: AirState } {
  const airAt = (id: string): AirState => {
    const zone = zones.findIndex((node) => node.id === id);
    const [nodes, airs, index] =
      zone >= 0
        ? [zones, zoneAir, zone]
        : [boundaries, boundaryAir, boundaries.findIndex((node) => node.id === id)];
    if (airs === undefined) return nodes[index]!.air;
    return {
      temperatureC: airs.temperatureC[index]!,
      densityKgPerM3: airs.densityKgPerM3[index]!,
    };
  };
  return { from: airAt(links[link]!.from), to: airAt(links[link]!.to) };
}

/** What is wrong with the lengths of the scenario's arrays, in words; undefined if nothing is. */
function shapeProblem(
  { zones, boundaries, links }: NetworkDescription,
  scenario: Scenario,
): string | undefined {
  const { zoneAir, boundaryAir } = scenario;
  const arrays: [string, Float64Array | undefined, number][] = [
    ['boundaryPressuresPa', scenario.boundaryPressuresPa, boundaries.length],
    ['zoneAir.temperatureC', zoneAir?.temperatureC, zones.length],
    ['zoneAir.densityKgPerM3', zoneAir?.densityKgPerM3, zones.length],
    ['boundaryAir.temperatureC', boundaryAir?.temperatureC, boundaries.length],
    ['boundaryAir.densityKgPerM3', boundaryAir?.densityKgPerM3, boundaries.length],
    ['columnDensityKgPerM3', scenario.columnDensityKgPerM3, links.length],
    ['linkScale', scenario.linkScale, links.length],
    ['linkOffsetPa', scenario.linkOffsetPa, links.length],
  ];
  const wrong = arrays.find(([, values, length]) => values && values.length !== length);
  return wrong && `${wrong[0]} has ${wrong[1]!.length} numbers, it needs ${wrong[2]}`;
}
