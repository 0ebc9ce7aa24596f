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
  findAllBalances,
  solveNetwork,
  type AllBalances,
  type RootBalance,
  type Scenario,
  type SolveResult,
} from '@evendraft/network';
import type { ColumnFindings } from './state-balance.js';

/** A solved situation, and how the columns of its shafts and flues were found to stand. */
export interface ResolvedSituation {
  /** The least favourable stable balance, or why there is none. */
  readonly result: SolveResult;
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
 * balances. All are found; the answer is the stable one with the lowest pressure in a zone with an appliance, in
 * a house without appliances that with the lowest pressure in any zone inside the envelope.
 *
 * @param compiled - the compiled house
 * @param situation - state, weather and index of the airtightness case
 * @returns the balance chosen, what runs in it, and how many others there are
 */
export function resolveColumns(
  compiled: CompiledHouse,
  situation: {
    readonly state: OperatingState;
    readonly weather: HouseWeather;
    readonly airtightnessCase: number;
  },
): ResolvedSituation {
  const { network, twoStateLinks } = compiled;
  const { followed, scenario } = houseScenario(compiled, situation);
  const densities = columnDensities(compiled, situation);
  const open = twoStateLinks.flatMap(({ index, id }, i) => {
    const density = densities[i]!;
    if (scenario.linkScale?.[index] === 0 || density.upward === density.downward) return [];
    return [
      { link: id, upwardDensityKgPerM3: density.upward, downwardDensityKgPerM3: density.downward },
    ];
  });
  if (open.length === 0) return { result: solveNetwork(network, scenario), followed, scenario };

  const found = findAllBalances(network.description, scenario, { twoState: open });
  if (found.status !== 'solved') {
    // A compiled house was built before, so that a rejection can only come from the scenario.
    const result = solveNetwork(network, scenario);
    return { result: found.status === 'rejected' ? result : found, followed, scenario };
  }
  const root = leastFavourable(compiled, found);
  if (root === undefined) {
    return { result: noStableBalance(found), followed, scenario };
  }
  const { links } = compiled;
  return {
    result: root.balance,
    followed,
    scenario: { ...scenario, columnDensityKgPerM3: settled(compiled, scenario, root) },
    columns: {
      stableBalances: found.balances.filter(({ stable }) => stable).length,
      complete: found.complete,
      states: root.columns.map(({ link, state }) => {
        const { role } = links[network.linkIndex.get(link) ?? -1]!;
        return { item: 'id' in role ? role.id : link, link, state };
      }),
    },
  };
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

function leastFavourable(
  { house }: CompiledHouse,
  { balances }: AllBalances,
): RootBalance | undefined {
  const withAppliance = new Set(house.appliances.map(({ zone }) => zone));
  const inside = house.zones.map(({ kind }) => insideZoneKinds.includes(kind));
  const counts = house.zones.map(({ id }, i) =>
    withAppliance.size === 0 ? inside[i] === true : withAppliance.has(id),
  );
  const lowest = ({ balance }: RootBalance): number =>
    counts.reduce((least, counted, i) => {
      return counted ? Math.min(least, balance.pressuresPa[i]!) : least;
    }, Infinity);
  return balances
    .filter(({ stable }) => stable)
    .reduce<RootBalance | undefined>(
      (worst, each) => (worst === undefined || lowest(each) < lowest(worst) ? each : worst),
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
