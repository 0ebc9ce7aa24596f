import { houseScenario, type OperatingState } from '@evendraft/house';
import { boundBalances } from '@evendraft/network';
import { severalWays, type PressureSpan } from '../resolve-columns.js';
import type { ExtremeKeeper } from './keep-extremes.js';
import type { OrderedSwitch } from './setting-order.js';
import type { SolvePlace } from './solve-states.js';
import { combinationsOf, stateOf } from './switches.js';

/** What is searched: one house in one weather with its doors as they are. */
export interface ColumnSearch {
  readonly at: SolvePlace;
  readonly order: readonly OrderedSwitch[];
  readonly doors: OperatingState['doors'];
  /** The house's zones in the baseline. */
  readonly baseline: PressureSpan;
  /** Extremes found so far, which the search tries to beat. */
  readonly kept: Pick<ExtremeKeeper, 'extremePa'>;
  /** Solves a state with every state of its columns, and offers it to what is kept. */
  readonly solve: (state: OperatingState) => void;
  /** Told of every bound. */
  readonly met: (pressures: PressureSpan) => void;
}

/** By how much a bound must beat an extreme before it is followed; states within it tie [Pa]. */
const beatenByPa = 5e-5;
/** Bounds that one search may solve before it is given up. */
const mostBounds = 20_000;

/**
 * Searches the states of a house in whose shafts and flues air may go either way.
 *
 * With the air of every column held, the ordering of settings holds; so the lowest pressure of any state is not
 * below the bound over all airs of the columns, with what is not yet decided set to carry most outward. Sets of states whose bound beats no extreme are left
 * out, the others are split, switch by switch, down to single states that are solved as they are. Likewise above.
 *
 * @param search - what is searched
 * @returns the bounds solved, and whether the search came to its end
 */
export function searchColumns(search: ColumnSearch): {
  readonly bounds: number;
  readonly complete: boolean;
} {
  const { order, doors, solve } = search;
  const rated = new Map(
    search.at.compiled.house.devices.map(({ id, speeds }) => [
      id,
      Math.max(0, ...speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS)),
    ]),
  );
  const strength = ({ id }: OrderedSwitch): number => rated.get(id) ?? 0;
  // What is not ordered is decided first, for no bound covers it; then the strongest, which tells most.
  const deciding = [...order].sort(
    (a, b) => undecided(b) - undecided(a) || strength(b) - strength(a),
  );
  for (const side of ['lowering', 'raising'] as const) {
    solve(stateOf(Object.fromEntries(order.map((each) => [each.id, each[side].at(-1)!])), doors));
  }
  const open: Readonly<Record<string, string>>[] = [{}];
  let bounds = 0;
  for (let fixed = open.pop(); fixed !== undefined; fixed = open.pop()) {
    const settled = fixed;
    const next = deciding.find(({ id }) => settled[id] === undefined);
    if (next === undefined) {
      solve(stateOf(settled, doors));
      continue;
    }
    if (undecided(next) === 0) {
      const rows = boundsOf(search, settled);
      bounds += rows.length;
      if (bounds > mostBounds) return { bounds, complete: false };
      if (!rows.some((row) => mayBeat(search, row))) continue;
    }
    for (const setting of next.settings) open.push({ ...settled, [next.id]: setting });
  }
  return { bounds, complete: true };
}

/** Settings that the ordering leaves beside one another; 0 where it decides between all. */
function undecided({ settings, lowering, raising }: OrderedSwitch): number {
  const decided = settings.length === 1 || (lowering.length === 1 && raising.length === 1);
  return decided ? 0 : settings.length;
}

interface Bound {
  readonly side: 'lowering' | 'raising';
  readonly pressures: PressureSpan;
}

/** Bounds on the pressures with what is not settled at its extremes, whichever way the air of columns goes. */
function boundsOf(
  { at, order, doors, met }: ColumnSearch,
  settled: Readonly<Record<string, string>>,
): readonly Bound[] {
  const { compiled, weather, airtightnessCase } = at;
  const zones = compiled.house.zones.length;
  return (['lowering', 'raising'] as const).flatMap((side) =>
    [
      ...combinationsOf(
        order.map((each) => {
          const known = settled[each.id];
          return { id: each.id, settings: known === undefined ? each[side] : [known] };
        }),
      ),
    ].map((settings): Bound => {
      const situation = { state: stateOf(settings, doors), weather, airtightnessCase };
      const { scenario } = houseScenario(compiled, situation);
      const { description, twoState } = severalWays(compiled, situation, scenario) ?? {
        description: compiled.network.description,
        twoState: [],
      };
      const bounds = boundBalances(description, scenario, { twoState });
      // A bound that could not be solved bounds nothing.
      const pressures = {
        lowestPa: bounds?.lowestPa.slice(0, zones) ?? new Float64Array(zones).fill(-Infinity),
        highestPa: bounds?.highestPa.slice(0, zones) ?? new Float64Array(zones).fill(Infinity),
      };
      met(pressures);
      return { side, pressures };
    }),
  );
}

function mayBeat({ kept, baseline }: ColumnSearch, { side, pressures }: Bound): boolean {
  const [sign, reached, from, kinds] =
    side === 'lowering'
      ? ([1, pressures.lowestPa, baseline.highestPa, ['lowest', 'largest fall']] as const)
      : ([-1, pressures.highestPa, baseline.lowestPa, ['highest', 'largest rise']] as const);
  return reached.some((pressure, zone) => {
    const values = [pressure, pressure - from[zone]!];
    return kinds.some((kind, index) => {
      const extreme = kept.extremePa(kind, zone);
      return extreme === undefined || sign * (values[index]! - extreme) < -beatenByPa;
    });
  });
}
