import type { CompiledHouse, OperatingState } from '@evendraft/house';
import type { BalanceQuestion } from './balance-study.js';
import { nextTurn } from './internal/next-turn.js';
import { randomNumbers } from './internal/random-numbers.js';
import { solveStates } from './internal/solve-states.js';
import { StudyArgumentError } from './study-argument-error.js';

/** What one running device contributes to the pressure of a zone. */
export interface DeviceShare {
  readonly device: string;
  readonly speed: string;
  /** Average of what it adds over all orders of switching on [Pa]. */
  readonly sharePa: number;
  /** Standard error of the average; 0 where every order was taken [Pa]. */
  readonly standardErrorPa: number;
  /** What it makes alone, against the baseline [Pa]. */
  readonly alonePa: number;
  /** What switching it off last would give back, with the sign of what it adds [Pa]. */
  readonly lastPa: number;
}

/** One step of switching on. */
export interface LadderStep {
  readonly device: string;
  readonly speed: string;
  /** Pressure once it runs with all before it [Pa]. */
  readonly pressurePa: number;
  /** What it adds at its place in the order [Pa]. */
  readonly addsPa: number;
}

/** Which device costs how many pascals in one zone, in one situation; plain JSON. */
export interface AttributionStudy {
  readonly question: 'attribution';
  readonly zone: string;
  readonly weather: string;
  /** With nothing running, all else the same [Pa]. */
  readonly baselinePa: number;
  readonly pressurePa: number;
  /** Add up to pressure less baseline, to rounding. */
  readonly shares: readonly DeviceShare[];
  /** In the order given, or the largest share first. */
  readonly ladder: readonly LadderStep[];
  readonly method:
    | { readonly kind: 'all orders'; readonly solves: number }
    | {
        readonly kind: 'sampled orders';
        readonly orders: number;
        readonly seed: number;
        readonly solves: number;
      };
}

/** How an attribution is made. */
export interface AttributionOptions {
  /** Order of the ladder, ids of what runs; the largest share first where absent. */
  readonly order?: readonly string[];
  /** Orders that are sampled where more than ten things run; each is taken both ways. 400 where absent. */
  readonly orders?: number;
  /** Of the samples; 1 where absent. */
  readonly seed?: number;
  readonly signal?: AbortSignal;
}

/** Up to this many running things every set is solved: 2^10 solves. */
const mostExact = 10;

/**
 * Shares the fall of a zone's pressure among what runs, by its average contribution over all orders of
 * switching on.
 *
 * share of i = sum over sets S without i of |S|! (n − |S| − 1)! / n! · (p(S and i) − p(S)). What follows by
 * interlock, make-up air among it, counts with what drives it. Up to ten things every set is solved; beyond,
 * orders are sampled, each with its reverse. In both the shares add up to the whole.
 *
 * Source: Shapley, A value for n-person games, 1953, from memory.
 *
 * @param compiled - the compiled house
 * @param of - the situation, and the zone by its id
 * @param options - order of the ladder, sampling
 * @returns the study; undefined where a state in between could not be solved
 * @throws StudyArgumentError where the zone or a name in the order is unknown
 */
export async function attributionStudy(
  compiled: CompiledHouse,
  of: BalanceQuestion & { readonly zone: string },
  options: AttributionOptions = {},
): Promise<AttributionStudy | undefined> {
  const zone = compiled.house.zones.findIndex(({ id }) => id === of.zone);
  if (zone < 0) throw new StudyArgumentError('zone', of.zone, 'the id of a zone of the house');
  const players = Object.entries(of.state.running);
  const { seed = 1, orders = 400, signal } = options;
  let solves = 0;
  const place = { compiled, weather: of.weather, airtightnessCase: of.airtightnessCase ?? 0 };
  const pressures = (sets: readonly (readonly number[])[]): readonly number[] => {
    const states = sets.map((set) =>
      stateWith(
        of.state,
        set.map((player) => players[player]!),
      ),
    );
    solves += states.length;
    // With nothing running it is the baseline, from which the fall is counted.
    return solveStates(place, states).map((row, index) => {
      const pressuresPa = sets[index]!.length === 0 ? row?.highestPa : row?.lowestPa;
      return pressuresPa?.[zone] ?? Number.NaN;
    });
  };

  const exact = players.length <= mostExact;
  const averages = exact
    ? everyOrder(players.length, pressures)
    : await sampledOrders({ players: players.length, orders, seed, pressures, signal });
  const all = [...players.keys()];
  const [baselinePa, pressurePa] = pressures([[], all]) as [number, number];
  const alone = pressures(all.map((player) => [player]));
  const without = pressures(all.map((player) => all.filter((other) => other !== player)));
  const shares = players.map(([device, speed], player) => ({
    device,
    speed,
    ...averages[player]!,
    alonePa: alone[player]! - baselinePa,
    lastPa: pressurePa - without[player]!,
  }));
  const order = ladderOrder(shares, options.order);
  const steps = pressures(order.map((_, index) => order.slice(0, index + 1)));
  if (
    ![baselinePa, pressurePa, ...averages.map((each) => each.sharePa), ...steps].every(
      Number.isFinite,
    )
  ) {
    return undefined;
  }
  return {
    question: 'attribution',
    zone: of.zone,
    weather: of.weather.name,
    baselinePa,
    pressurePa,
    shares,
    ladder: order.map((player, index) => ({
      device: players[player]![0],
      speed: players[player]![1],
      pressurePa: steps[index]!,
      addsPa: steps[index]! - (steps[index - 1] ?? baselinePa),
    })),
    method: exact
      ? { kind: 'all orders', solves }
      : { kind: 'sampled orders', orders: 2 * Math.ceil(orders / 2), seed, solves },
  };
}

interface Average {
  readonly sharePa: number;
  readonly standardErrorPa: number;
}

type PressuresOfSets = (sets: readonly (readonly number[])[]) => readonly number[];

function everyOrder(players: number, pressures: PressuresOfSets): readonly Average[] {
  const sets = Array.from({ length: 2 ** players }, (_, bits) =>
    Array.from({ length: players }, (__, player) => player).filter(
      (player) => (bits >> player) & 1,
    ),
  );
  const value = pressures(sets);
  /** |S|! (n − |S| − 1)! / n!, by the size of S. */
  const weight = Array.from(
    { length: players },
    (_, size) => 1 / (players * choose(players - 1, size)),
  );
  return Array.from({ length: players }, (_, player) => {
    let sharePa = 0;
    sets.forEach((set, bits) => {
      if ((bits >> player) & 1) return;
      sharePa += weight[set.length]! * (value[bits | (1 << player)]! - value[bits]!);
    });
    return { sharePa, standardErrorPa: 0 };
  });
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i += 1) ways = (ways * (n - k + i)) / i;
  return ways;
}

async function sampledOrders(of: {
  readonly players: number;
  readonly orders: number;
  readonly seed: number;
  readonly pressures: PressuresOfSets;
  readonly signal: AbortSignal | undefined;
}): Promise<readonly Average[]> {
  const { below } = randomNumbers(of.seed);
  const pairs = Math.max(2, Math.ceil(of.orders / 2));
  const sum = new Float64Array(of.players);
  const squares = new Float64Array(of.players);
  for (let pair = 0; pair < pairs; pair += 1) {
    const order = shuffled(of.players, below);
    const both = [order, [...order].reverse()].map((each) => additions(each, of.pressures));
    for (let player = 0; player < of.players; player += 1) {
      // An order and its reverse are one draw: their mean varies far less than either.
      const mean = (both[0]![player]! + both[1]![player]!) / 2;
      sum[player]! += mean;
      squares[player]! += mean * mean;
    }
    if (pair % 50 === 49) {
      await nextTurn();
      of.signal?.throwIfAborted();
    }
  }
  return Array.from(sum, (total, player) => {
    const sharePa = total / pairs;
    const variance = Math.max(0, squares[player]! / pairs - sharePa * sharePa);
    return { sharePa, standardErrorPa: Math.sqrt(variance / (pairs - 1)) };
  });
}

/** What each player adds at its place in one order. */
function additions(order: readonly number[], pressures: PressuresOfSets): Float64Array {
  const value = pressures([[], ...order.map((_, index) => order.slice(0, index + 1))]);
  const adds = new Float64Array(order.length);
  order.forEach((player, index) => {
    adds[player] = value[index + 1]! - value[index]!;
  });
  return adds;
}

function shuffled(count: number, below: (count: number) => number): readonly number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  for (let left = count - 1; left > 0; left -= 1) {
    const other = below(left + 1);
    [order[left], order[other]] = [order[other]!, order[left]!];
  }
  return order;
}

function ladderOrder(
  shares: readonly DeviceShare[],
  given: readonly string[] | undefined,
): readonly number[] {
  const players = [...shares.keys()];
  if (given === undefined) return players.sort((a, b) => shares[a]!.sharePa - shares[b]!.sharePa);
  const order = given.map((id) => shares.findIndex(({ device }) => device === id));
  const complete = order.length === players.length && new Set(order).size === players.length;
  if (!complete || order.includes(-1)) {
    throw new StudyArgumentError('order', given.join(', '), 'each thing that runs, once');
  }
  return order;
}

function stateWith(
  state: OperatingState,
  running: readonly (readonly [string, string])[],
): OperatingState {
  return { ...state, running: Object.fromEntries(running) };
}
