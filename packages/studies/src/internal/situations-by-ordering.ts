import {
  baselineOf,
  houseScenario,
  type CompiledHouse,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import { batchStatuses, solveBatch } from '@evendraft/network';
import type { BalanceQuestion } from '../balance-study.js';
import type { ShownRange } from './carries-at-least.js';
import { orderSettings, type OrderedSwitch } from './setting-order.js';
import { stackScenarios } from './stack-scenarios.js';
import { combinationsOf, doorSwitchesOf, stateOf } from './switches.js';
import { depthOf, inTies } from './ties.js';

/** Situations that hold every extreme of a house, and how that was shown. */
export interface ExtremeSituations {
  /** In the order of study; the lowest pressure and the largest fall of every zone are among them. */
  readonly questions: readonly BalanceQuestion[];
  /** Settings that the ordering made needless somewhere, and what it rests on. */
  readonly coverage: OrderingCoverage;
}

/** What was shown law against law, and what was gone through. */
export interface OrderingCoverage {
  /** Switches of which only the settings that carry most outward were solved. */
  readonly ordered: readonly string[];
  /** Switches of which every setting was solved, because the ordering does not hold or was not shown. */
  readonly notOrdered: readonly string[];
  readonly solves: number;
  readonly unsolved: number;
  /** True where every pressure stayed in the range in which the laws were compared. */
  readonly premiseHolds: boolean;
}

/** How a search is watched and stopped; it rests between blocks of solves. */
export interface SearchOptions {
  /** Called between blocks of solves, with how many are done. */
  readonly rest: (done: number) => Promise<void>;
}

/** Solves in one batch. */
const rowsPerBatch = 512;

/** Most of the deepest situations that are kept beside the extremes. */
const keptDeepest = 200;

/**
 * Finds the situations with the lowest pressure and the largest fall of every zone, by the ordering of settings.
 *
 * Weather, doors and airtightness are gone through; so is every switch whose settings are not ordered. For the
 * others only the settings that carry most outward are solved. Those that carry least are solved too: between
 * the two lies every pressure of the house, which must stay where the laws were compared.
 *
 * @param compiled - the compiled house
 * @param weathers - the weathers, worked out
 * @param options - how to rest
 * @returns the situations and the coverage
 */
export async function situationsByOrdering(
  compiled: CompiledHouse,
  weathers: readonly HouseWeather[],
  options: SearchOptions,
): Promise<ExtremeSituations> {
  let needed: ShownRange = { fromPa: -100, toPa: 30 };
  for (let attempt = 1; ; attempt += 1) {
    const { met, ...found } = await search({ compiled, weathers, needed, ...options });
    if (found.coverage.premiseHolds || attempt === mostAttempts) return found;
    // Pressures went further than the laws were compared; compare them further and search again.
    needed = {
      fromPa: 1.5 * Math.min(met.fromPa, needed.fromPa),
      toPa: 1.5 * Math.max(met.toPa, needed.toPa),
    };
  }
}

/** Times that the laws are compared over a wider range before the search gives up. */
const mostAttempts = 3;

interface Search extends SearchOptions {
  readonly compiled: CompiledHouse;
  readonly weathers: readonly HouseWeather[];
  readonly needed: ShownRange;
}

async function search({
  compiled,
  weathers,
  needed,
  rest,
}: Search): Promise<ExtremeSituations & { readonly met: ShownRange }> {
  const { house } = compiled;
  let met: ShownRange = { fromPa: 0, toPa: 0 };
  const cases = house.airtightness.cases.map((_, index) => index);
  const found = collectExtremes(compiled);
  const orders: (readonly OrderedSwitch[])[] = [];
  let solves = 0;
  let unsolved = 0;
  let premiseHolds = true;

  for (const airtightnessCase of cases) {
    for (const weather of weathers) {
      const order = orderSettings(compiled, { weather, airtightnessCase }, needed);
      orders.push(order);
      const shown = shownFor(order);
      const sparePa = spareOf(compiled, weather);
      for (const doors of combinationsOf(doorSwitchesOf(house))) {
        const at = { compiled, weather, airtightnessCase };
        const [baseline] = pressuresOf(at, [baselineOf(stateOf({}, doors))]);
        solves += 1;
        for (const side of ['lowering', 'raising'] as const) {
          const settings = order.map((each) => ({ id: each.id, settings: each[side] }));
          for (const states of blocks(combinationsOf(settings), doors)) {
            const rows = pressuresOf(at, states);
            solves += states.length;
            rows.forEach((pressuresPa, row) => {
              if (pressuresPa === undefined || baseline === undefined) unsolved += 1;
              else {
                const reached = reachedBy(pressuresPa.subarray(0, house.zones.length), sparePa);
                premiseHolds &&= shown.fromPa <= reached.fromPa && reached.toPa <= shown.toPa;
                met = {
                  fromPa: Math.min(met.fromPa, reached.fromPa),
                  toPa: Math.max(met.toPa, reached.toPa),
                };
                if (side === 'lowering') {
                  const question = { state: states[row]!, weather, airtightnessCase };
                  found.add({ question, order, pressuresPa, baseline });
                }
              }
            });
            await rest(solves);
          }
        }
      }
    }
  }
  const plain = found.all().map((extreme) => {
    const made = plainest(compiled, extreme);
    solves += made.solves;
    return made.question;
  });
  const isOrdered = (index: number): boolean =>
    orders.some((order) => order[index]!.lowering.length < order[index]!.settings.length);
  const ids = (orders[0] ?? []).map(({ id }) => id);
  return {
    met,
    questions: withoutRepeats(plain),
    coverage: {
      ordered: ids.filter((_, index) => isOrdered(index)),
      notOrdered: ids.filter((_, index) => !isOrdered(index)),
      solves,
      unsolved,
      premiseHolds,
    },
  };
}

interface Place {
  readonly compiled: CompiledHouse;
  readonly weather: HouseWeather;
  readonly airtightnessCase: number;
}

/** Pressures of the house's zones and of its junctions, one row a state; undefined where not solved. */
function pressuresOf(
  { compiled, weather, airtightnessCase }: Place,
  states: readonly OperatingState[],
): readonly (Float64Array | undefined)[] {
  const scenarios = states.map(
    (state) => houseScenario(compiled, { state, weather, airtightnessCase }).scenario,
  );
  const result = solveBatch(compiled.network, stackScenarios(scenarios));
  const zones = compiled.network.description.zones.length;
  return states.map((_, row) =>
    batchStatuses[result.status[row]!] === 'solved'
      ? result.pressuresPa.slice(row * zones, (row + 1) * zones)
      : undefined,
  );
}

function* blocks(
  settings: Iterable<Readonly<Record<string, string>>>,
  doors: OperatingState['doors'],
): Generator<readonly OperatingState[]> {
  let block: OperatingState[] = [];
  for (const each of settings) {
    block.push(stateOf(each, doors));
    if (block.length < rowsPerBatch) continue;
    yield block;
    block = [];
  }
  if (block.length > 0) yield block;
}

/** Pascals that a metre of height can make between an opening and the floor where a pressure is quoted. */
const pascalsPerMetre = 15;

/** What separates a pressure at the floor from the difference at any opening: wind and height [Pa]. */
function spareOf(compiled: CompiledHouse, weather: HouseWeather): number {
  const heights = compiled.links.flatMap(({ description }) => [
    Math.abs(description.fromHeightM),
    Math.abs(description.toHeightM),
  ]);
  return (
    weather.boundaryPressuresPa.reduce((most, pressure) => Math.max(most, Math.abs(pressure)), 0) +
    pascalsPerMetre * Math.max(0, ...heights)
  );
}

/** The range in which the premise of every ordered switch was shown. */
function shownFor(order: readonly OrderedSwitch[]): ShownRange {
  return {
    fromPa: Math.max(-Infinity, ...order.map(({ shown }) => shown.fromPa)),
    toPa: Math.min(Infinity, ...order.map(({ shown }) => shown.toPa)),
  };
}

function reachedBy(pressuresPa: Float64Array, sparePa: number): ShownRange {
  return { fromPa: Math.min(...pressuresPa) - sparePa, toPa: Math.max(...pressuresPa) + sparePa };
}

interface FoundExtreme {
  readonly question: BalanceQuestion;
  readonly order: readonly OrderedSwitch[];
  readonly pressuresPa: Float64Array;
  readonly baseline: Float64Array;
}

/** Keeps the first situation of those that tie for each extreme of each zone, and the deepest of all. */
function collectExtremes(compiled: CompiledHouse): {
  add(extreme: FoundExtreme): void;
  all(): readonly FoundExtreme[];
} {
  const { zones } = compiled.house;
  const depth = depthOf(zones);
  const best = new Map<
    string,
    { readonly rank: readonly number[]; readonly extreme: FoundExtreme }
  >();
  let deepest: { readonly depth: number; readonly extreme: FoundExtreme }[] = [];
  const offer = (key: string, rank: readonly number[], extreme: FoundExtreme): void => {
    const before = best.get(key)?.rank;
    const better =
      before === undefined ||
      rank[0]! < before[0]! ||
      (rank[0] === before[0] && rank[1]! < before[1]!);
    if (better) best.set(key, { rank, extreme });
  };
  return {
    add(extreme) {
      const deep = inTies(depth(extreme.pressuresPa));
      zones.forEach((zone, index) => {
        const pressurePa = extreme.pressuresPa[index]!;
        const fallPa = pressurePa - extreme.baseline[index]!;
        offer(`lowest ${zone.id}`, [inTies(pressurePa), deep], extreme);
        offer(`fall ${zone.id}`, [inTies(fallPa), deep], extreme);
      });
      deepest.push({ depth: deep, extreme });
      if (deepest.length < 4 * keptDeepest) return;
      deepest = deepest.sort((a, b) => a.depth - b.depth).slice(0, keptDeepest);
    },
    all() {
      deepest = deepest.sort((a, b) => a.depth - b.depth).slice(0, keptDeepest);
      return [...best.values(), ...deepest].map(({ extreme }) => extreme);
    },
  };
}

/**
 * The plainest state that ties with an extreme in every zone: switch by switch the lowest setting that changes
 * nothing. It is the first of those that tie in the order of study, since more outflow never raises a pressure.
 */
function plainest(
  compiled: CompiledHouse,
  { question, order, pressuresPa }: FoundExtreme,
): { readonly question: BalanceQuestion; readonly solves: number } {
  const { state } = question;
  const rooms = compiled.house.zones.map((_, index) => index);
  const settings: Record<string, string> = Object.fromEntries(
    order.map(({ id }) => [id, state.running[id] ?? 'off']),
  );
  let solves = 0;
  for (const { id, settings: all, lowering } of order) {
    const set = settings[id]!;
    if (lowering.length === all.length) continue;
    const lower = all.slice(0, all.indexOf(set));
    if (lower.length === 0) continue;
    const states = lower.map((setting) => stateOf({ ...settings, [id]: setting }, state.doors));
    const rows = pressuresOf(
      { compiled, ...question, airtightnessCase: question.airtightnessCase ?? 0 },
      states,
    );
    solves += states.length;
    const first = rows.findIndex(
      (row) =>
        row !== undefined &&
        rooms.every((room) => inTies(row[room]!) === inTies(pressuresPa[room]!)),
    );
    if (first >= 0) settings[id] = lower[first]!;
  }
  return { question: { ...question, state: stateOf(settings, state.doors) }, solves };
}

function withoutRepeats(questions: readonly BalanceQuestion[]): readonly BalanceQuestion[] {
  const known = new Map<string, BalanceQuestion>();
  for (const question of questions) {
    const { running, doors } = question.state;
    const key = JSON.stringify([
      question.airtightnessCase,
      question.weather.name,
      Object.entries(running).sort(),
      Object.entries(doors).sort(),
    ]);
    if (!known.has(key)) known.set(key, question);
  }
  return [...known.values()];
}
