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
  /** Absent where no column is open that could hold either of two airs. */
  readonly columns?: ColumnFindings;
}

/**
 * Solves one situation with every state of its columns that agrees with the flow through them.
 *
 * A shaft, a vertical duct or a flue fills with whichever air enters it, so that a situation can have several
 * balances. Of the stable ones the answer is that with the lowest pressure in a zone with an appliance, in a house
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
  const open = openColumns(compiled, situation, scenario);
  if (open.length === 0) return plain();

  const zones = house.zones.length;
  const found = findExtremeBalances(network.description, scenario, { twoState: open, zones });
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

/**
 * Columns of a situation that are open and could hold either of two airs.
 *
 * @param compiled - the compiled house
 * @param situation - state, weather and index of the airtightness case
 * @param scenario - its overrides, which say what is open
 * @returns both airs of each
 */
export function openColumns(
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
      ? `No stable balance was found among ${balances.length}; check the heights and temperatures of shafts and flues.`
      : 'The search for every balance ended before it was complete; join shafts or flues that stand alike.',
  };
}
