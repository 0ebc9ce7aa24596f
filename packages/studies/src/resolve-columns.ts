import {
  columnDensities,
  houseScenario,
  insideZoneKinds,
  type CompiledHouse,
  type FollowedState,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import {
  findExtremeBalances,
  solveNetwork,
  type AllBalances,
  type AllBalancesResult,
  type NetworkDescription,
  type RootBalance,
  type Scenario,
  type SolveResult,
  type TwoStateColumn,
} from '@evendraft/network';
import type { ColumnFindings } from './state-balance.js';

/** A situation of which balances are wanted. */
export interface ColumnSituation {
  readonly state: OperatingState;
  readonly weather: HouseWeather;
  /** Index of the airtightness case. */
  readonly airtightnessCase: number;
}

/** Pressures of the house's zones, each over all stable balances of a situation [Pa]. */
export interface PressureSpan {
  readonly lowestPa: Float64Array;
  readonly highestPa: Float64Array;
}

/** A solved situation, and how the columns of its shafts and flues were found to stand. */
export interface ResolvedSituation {
  /** The balance chosen, or why there is none. */
  readonly result: SolveResult;
  /** Of every zone apart, over all stable balances; absent where no column can hold either of two airs. */
  readonly span?: PressureSpan;
  readonly followed: FollowedState;
  /** The overrides on the network, its columns as in the balance shown. */
  readonly scenario: Scenario;
  /** Absent where no column is open that could hold either of two airs, and no fan runs that stalls. */
  readonly columns?: ColumnFindings;
}

/**
 * Solves one situation with every state of its columns that agrees with the flow through them.
 *
 * A shaft, a vertical duct or a flue fills with whichever air enters it, so that a situation can have several
 * balances; so can a fan on a curve with a stall. Of the stable ones the answer is that with the lowest pressure in a zone with an appliance, in a house
 * without appliances in any zone inside the envelope. A baseline, from which a fall is counted, takes the highest.
 *
 * @param compiled - the compiled house
 * @param situation - state, weather and index of the airtightness case
 * @param shown - which balance is the answer; the lowest when absent
 * @returns the balance chosen, the range of every zone over all, what runs, and how many others there are
 */
export function resolveColumns(
  compiled: CompiledHouse,
  situation: ColumnSituation,
  shown: 'lowest' | 'highest' = 'lowest',
): ResolvedSituation {
  const { network, house } = compiled;
  const { followed, scenario } = houseScenario(compiled, situation);
  const plain = (): ResolvedSituation => {
    return { result: solveNetwork(network, scenario), followed, scenario };
  };
  const several = severalWays(compiled, situation, scenario);
  if (several === undefined) return plain();

  const zones = house.zones.length;
  const found = balancesOnce(compiled, situation, () => {
    const { description, twoState } = several;
    return findExtremeBalances(description, scenario, { twoState, zones });
  });
  if (found.status !== 'solved') {
    // A compiled house was built before, so that a rejection can only come from the scenario.
    return found.status === 'rejected' ? plain() : { result: found, followed, scenario };
  }
  const root = chosen(compiled, found, shown);
  if (root === undefined) {
    return { result: noStableBalance(found), followed, scenario };
  }
  const { links } = compiled;
  return {
    result: root.balance,
    span: spanOf(zones, found.balances),
    followed,
    scenario: { ...scenario, columnDensityKgPerM3: settled(compiled, scenario, root) },
    columns: {
      stableBalances: found.balances.length,
      counted: found.counted,
      complete: found.complete,
      states: root.columns.map(({ link, state }) => {
        const { role } = links[network.linkIndex.get(link) ?? -1]!;
        return { item: 'id' in role ? role.id : link, link, state };
      }),
    },
  };
}

/** Most situations of one house whose balances are kept. */
const mostKept = 4000;
const keptBalances = new WeakMap<CompiledHouse, Map<string, AllBalancesResult>>();

/** The balances of a situation, searched once: several studies ask for the same, and a search is long. */
function balancesOnce(
  compiled: CompiledHouse,
  { state, weather, airtightnessCase }: ColumnSituation,
  search: () => AllBalancesResult,
): AllBalancesResult {
  const kept = keptBalances.get(compiled) ?? new Map<string, AllBalancesResult>();
  keptBalances.set(compiled, kept);
  // By its numbers, for studies vary a weather without giving it another name.
  const key = JSON.stringify([
    ...[airtightnessCase, Object.entries(state.running).sort(), Object.entries(state.doors).sort()],
    ...[Object.entries(state.firing ?? {}).sort(), weather.outdoorAir],
    ...[Array.from(weather.boundaryPressuresPa), Array.from(weather.zoneAir.temperatureC)],
    Array.from(weather.boundaryAir.temperatureC),
  ]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const found = search();
  if (kept.size < mostKept) kept.set(key, found);
  return found;
}

/** A situation that may have several balances: a network with the curves of fans that stall, and open columns. */
export interface SeveralWays {
  readonly description: NetworkDescription;
  /** Both airs of each open column. */
  readonly twoState: readonly TwoStateColumn[];
}

/**
 * Whether situations of a house may have several balances.
 *
 * @param compiled - the compiled house
 * @returns whether it has columns of two airs, or fans that stall
 */
export function mayStandInSeveralWays({ twoStateLinks, stalls }: CompiledHouse): boolean {
  return twoStateLinks.length > 0 || stalls !== undefined;
}

/**
 * What lets one situation have several balances: open columns that could hold either of two airs, and fans that
 * run on a curve with a stall.
 *
 * @param compiled - the compiled house
 * @param situation - state, weather and index of the airtightness case
 * @param scenario - its overrides, which say what is open and what runs
 * @returns network and columns; undefined where there is nothing of the kind
 */
export function severalWays(
  compiled: CompiledHouse,
  situation: ColumnSituation,
  scenario: Scenario,
): SeveralWays | undefined {
  const { stalls, network } = compiled;
  const stalling = stalls?.links.some((link) => scenario.linkScale?.[link] !== 0) === true;
  const twoState = openColumns(compiled, situation, scenario);
  if (twoState.length === 0 && !stalling) return undefined;
  return { description: stalling ? stalls.description : network.description, twoState };
}

function openColumns(
  compiled: CompiledHouse,
  situation: ColumnSituation,
  scenario: Scenario,
): readonly TwoStateColumn[] {
  if (compiled.twoStateLinks.length === 0) return [];
  const densities = columnDensities(compiled, situation);
  return compiled.twoStateLinks.flatMap(({ index, id }, i) => {
    const density = densities[i]!;
    if (scenario.linkScale?.[index] === 0 || density.upward === density.downward) return [];
    return [
      { link: id, upwardDensityKgPerM3: density.upward, downwardDensityKgPerM3: density.downward },
    ];
  });
}

function spanOf(zones: number, balances: readonly RootBalance[]): PressureSpan {
  const over = (pick: (...pressures: number[]) => number): Float64Array =>
    Float64Array.from({ length: zones }, (_, zone) =>
      pick(...balances.map(({ balance }) => balance.pressuresPa[zone]!)),
    );
  return { lowestPa: over(Math.min), highestPa: over(Math.max) };
}

/** Densities of all columns, those of two states as a balance has them [kg/m3]. */
function settled(
  { network }: CompiledHouse,
  { columnDensityKgPerM3 }: Scenario,
  { columns }: RootBalance,
): Float64Array {
  const densities =
    columnDensityKgPerM3?.slice() ?? new Float64Array(network.description.links.length);
  for (const { link, densityKgPerM3 } of columns) {
    densities[network.linkIndex.get(link) ?? -1] = densityKgPerM3;
  }
  return densities;
}

function chosen(
  { house }: CompiledHouse,
  { balances }: AllBalances,
  shown: 'lowest' | 'highest',
): RootBalance | undefined {
  const withAppliance = new Set(house.appliances.map(({ zone }) => zone));
  const inside = house.zones.map(({ kind }) => insideZoneKinds.includes(kind));
  const counts = house.zones.map(({ id }, i) =>
    withAppliance.size === 0 ? inside[i] === true : withAppliance.has(id),
  );
  const sign = shown === 'lowest' ? 1 : -1;
  const furthest = ({ balance }: RootBalance): number =>
    counts.reduce((least, counted, i) => {
      return counted ? Math.min(least, sign * balance.pressuresPa[i]!) : least;
    }, Infinity);
  return balances.reduce<RootBalance | undefined>(
    (best, each) => (best === undefined || furthest(each) < furthest(best) ? each : best),
    undefined,
  );
}

function noStableBalance({ balances, complete }: AllBalances): SolveResult {
  return {
    status: 'not-converged',
    zones: [],
    worstZone: undefined,
    iterations: 0,
    hint: complete
      ? `No stable balance was found among ${balances.length}; check the heights and temperatures of shafts and flues, and the curves of fans.`
      : 'The search for every balance ended before it was complete; join shafts or flues that stand alike.',
  };
}
