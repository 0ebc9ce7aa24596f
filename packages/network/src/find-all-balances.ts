import type { AirState } from '@evendraft/airflow';
import type { UnsolvedBalance } from './balance.js';
import type { PressureBounds, SearchedColumn } from './internal/column-bounds.js';
import { boundsWidth, closerBounds, firstBounds } from './internal/column-bounds.js';
import type { StatedColumn } from './internal/column-states.js';
import { descriptionIssues } from './internal/description-issues.js';
import { freeRisingFans } from './internal/freed-network.js';
import type { BalanceSearch, FoundBalances } from './internal/search-balances.js';
import { searchBalances } from './internal/search-balances.js';
import type { NetworkDescription } from './network-description.js';
import type { NetworkIssue } from './network-issue.js';
import type { RootBalance } from './root-balance.js';
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

/** Every balance of a network, in rising order of the first fan's flow. */
export interface AllBalances {
  readonly status: 'solved';
  readonly balances: readonly RootBalance[];
  /** Nothing was left in which a balance that was asked for could still hide. */
  readonly complete: boolean;
  /** Every balance of the kind asked for is listed, not only those with the extremes. */
  readonly counted: boolean;
}

/** Every balance, or why there is none. */
export type AllBalancesResult =
  | AllBalances
  | { readonly status: 'rejected'; readonly issues: readonly NetworkIssue[] }
  | UnsolvedBalance;

const defaultMostSolves = 20_000;
/** Rounds in which bounds on all balances are drawn closer. */
const mostBoundRounds = 8;

/**
 * Finds every balance of a network in which fans' curves rise or columns have two states.
 *
 * A fan whose curve rises is replaced by its flow; then the rest has one balance, and boxes of flows are halved
 * until no curve can meet what the rest asks. Each column has the air of upward flow, or of downward flow, or is at
 * rest with a mixture of both; bounds on the pressures tell which of these are possible at all, and those are
 * tried. What is kept flows the way it was assumed. A column at rest whose upward air drives upward is an unstable
 * balance between the two others.
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
  const search = balanceSearch(description, scenario, options);
  if ('status' in search) return search;
  return inOrder(searchBalances(search));
}

/**
 * Finds the stable balances of a network, and where there are many at least those with the lowest and the highest
 * pressure of each zone.
 *
 * As {@link findAllBalances}; but a column that could only rest unstably is not held at rest, and what cannot hold
 * an extreme is left out once some balances are known. `complete` then speaks of the extremes.
 *
 * @param description - a network; its fan curves may rise
 * @param scenario - what differs from the description; the states replace its densities of their columns
 * @param options - columns, a ceiling on solves, and of how many zones, from the first, the extremes are wanted
 * @returns stable balances, `counted` where they are all; or the issues, or why nothing balances
 */
export function findExtremeBalances(
  description: NetworkDescription,
  scenario: Scenario,
  options: AllBalancesOptions & { readonly zones: number },
): AllBalancesResult {
  const search = balanceSearch(description, scenario, options);
  if ('status' in search) return search;
  return inOrder(searchBalances({ ...search, extremesOf: options.zones }));
}

/**
 * Encloses every balance that a network has, whichever way the air of its columns goes.
 *
 * @param description - a network; its fan curves may rise
 * @param scenario - what differs from the description
 * @param options - columns of two states
 * @returns bounds on the pressures of the zones [Pa]; undefined where they could not be found
 */
export function boundBalances(
  description: NetworkDescription,
  scenario: Scenario,
  options: Pick<AllBalancesOptions, 'twoState'>,
): PressureBounds | undefined {
  const search = balanceSearch(description, scenario, options);
  if ('status' in search) return undefined;
  const open = search.columns.map(() => undefined);
  let bounds = firstBounds(search, open);
  for (let round = 0; bounds !== undefined && round < mostBoundRounds; round++) {
    const closer = closerBounds(search, open, bounds);
    const slow = boundsWidth(closer) > 0.9 * boundsWidth(bounds);
    bounds = closer;
    if (slow) break;
  }
  return bounds;
}

function balanceSearch(
  description: NetworkDescription,
  scenario: Scenario,
  { twoState = [], mostSolves = defaultMostSolves }: AllBalancesOptions,
): BalanceSearch | Exclude<AllBalancesResult, AllBalances> {
  const errors = errorsOf(description);
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
  const asked = twoState.map((column) => statedColumn(description, column));
  return {
    freed,
    asked,
    linkIds: description.links.map(({ id }) => id),
    // Where both airs press alike there is nothing to choose.
    columns: asked
      .filter(
        (column) =>
          column.riseM !== 0 && column.upwardDensityKgPerM3 !== column.downwardDensityKgPerM3,
      )
      .map((column) => searchedColumn(description, scenario, column)),
    densities: columnDensities(description, scenario, asked),
    budget: { left: mostSolves },
  };
}

/** A description is searched again in every state of a house. */
const knownErrors = new WeakMap<NetworkDescription, readonly NetworkIssue[]>();

function errorsOf(description: NetworkDescription): readonly NetworkIssue[] {
  const known = knownErrors.get(description);
  if (known !== undefined) return known;
  const errors = descriptionIssues(description).issues.filter(
    ({ severity }) => severity === 'error',
  );
  knownErrors.set(description, errors);
  return errors;
}

/** Balances in rising order of the first fan's flow, or why there is none. */
function inOrder({ balances, complete, counted, unsolved }: FoundBalances): AllBalancesResult {
  if (unsolved !== undefined && balances.length === 0) return unsolved;
  const firstFlow = ({ fans }: RootBalance): number => fans[0]?.volumeFlowM3PerS ?? 0;
  return {
    status: 'solved',
    balances: [...balances].sort((a, b) => firstFlow(a) - firstFlow(b)),
    complete,
    counted,
  };
}

function statedColumn(description: NetworkDescription, column: TwoStateColumn): StatedColumn {
  const link = description.links.findIndex(({ id }) => id === column.link);
  if (link < 0) throw new UnknownIdError(column.link);
  const { fromHeightM, toHeightM } = description.links[link]!;
  const { upwardDensityKgPerM3, downwardDensityKgPerM3 } = column;
  return { link, upwardDensityKgPerM3, downwardDensityKgPerM3, riseM: toHeightM - fromHeightM };
}

function searchedColumn(
  { links, zones, boundaries }: NetworkDescription,
  { zoneAir, boundaryAir }: Scenario,
  column: StatedColumn,
): SearchedColumn {
  const link = links[column.link]!;
  const zoneOf = (id: string): number => zones.findIndex((node) => node.id === id);
  const airAt = (id: string): AirState => {
    const zone = zoneOf(id);
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
  return {
    ...column,
    description: link,
    air: { from: airAt(link.from), to: airAt(link.to) },
    zones: [zoneOf(link.from), zoneOf(link.to)],
  };
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
