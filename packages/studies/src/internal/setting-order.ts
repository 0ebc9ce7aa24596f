import { houseScenario, type CompiledHouse, type House, type HouseWeather } from '@evendraft/house';
import type { AirState } from '@evendraft/airflow';
import { carriesAtLeast, type SeenLaw, type ShownRange } from './carries-at-least.js';
import type { SolvePlace } from './solve-states.js';
import { doorSwitchesOf, stateOf, switchesOf, type Switch } from './switches.js';

/** The settings of one switch that can be the extreme ones, in one weather. */
export interface OrderedSwitch {
  readonly id: string;
  readonly settings: readonly string[];
  /** Settings that may give the lowest pressures: none of the others carries more outward. */
  readonly lowering: readonly string[];
  /** Settings that may give the highest pressures: none of the others carries less outward. */
  readonly raising: readonly string[];
  /** Where what was shown holds: every pressure of the house must stay in it [Pa]. */
  readonly shown: ShownRange;
}

const everywhere: ShownRange = { fromPa: -Infinity, toPa: Infinity };

/**
 * Orders the settings of every switch by what they carry out of the house, law against law.
 *
 * Premise: with everything else held, a setting whose links carry outward at least what another's carry, at
 * every pressure difference, gives no higher pressure in any zone. A link counts where one end is a zone of
 * the house and the other a place of known pressure, straight or through a chain of junctions of its own.
 * What is not shown is not ordered, and then every setting stays.
 *
 * @param place - house, weather whose air the laws carry, airtightness case
 * @param needed - pressure differences that must be covered
 * @returns one row a switch, in the order of states
 */
export function orderSettings(
  { compiled, weather, airtightnessCase }: SolvePlace,
  needed: ShownRange,
): readonly OrderedSwitch[] {
  const switches = switchesOf(compiled.house);
  const doors = Object.fromEntries(
    doorSwitchesOf(compiled.house).map(({ id, settings }) => [id, settings[0] ?? 'open']),
  );
  const lowest = Object.fromEntries(switches.map(({ id, settings }) => [id, settings[0] ?? 'off']));
  const scales = (settings: Readonly<Record<string, string>>): Float64Array =>
    houseScenario(compiled, { state: stateOf(settings, doors), weather, airtightnessCase }).scenario
      .linkScale ?? new Float64Array(compiled.links.length).fill(1);

  const own = switches.map((each) =>
    each.settings.map((setting) => scales({ ...lowest, [each.id]: setting })),
  );
  const moved = own.map((rows) => changedLinks(rows));
  const independent = separate(moved) && composes({ switches, own, moved, scales });
  const places = placesOf(compiled, weather);
  return switches.map((each, index) => {
    if (!independent) return unordered(each);
    const of = { rows: own[index]!, links: moved[index]!, compiled, places, needed };
    return orderOne(each, of) ?? unordered(each);
  });
}

/**
 * The switches of a house without any ordering: every setting stays.
 *
 * @param house - the house
 * @returns one row a switch, in the order of states
 */
export function orderNothing(house: House): readonly OrderedSwitch[] {
  return switchesOf(house).map(unordered);
}

function unordered(each: Switch): OrderedSwitch {
  return { ...each, lowering: each.settings, raising: each.settings, shown: everywhere };
}

interface SwitchLinks {
  /** Factor on every link, one row a setting. */
  readonly rows: readonly Float64Array[];
  /** Links whose factor the switch moves. */
  readonly links: readonly number[];
  readonly compiled: CompiledHouse;
  readonly places: Places;
  readonly needed: ShownRange;
}

function orderOne(each: Switch, of: SwitchLinks): OrderedSwitch | undefined {
  const sides = sidesOf(of);
  if (sides === undefined) return undefined;
  const shownOf = new Map<string, ShownRange | undefined>();
  const beats = (larger: number, smaller: number): ShownRange | undefined => {
    const key = `${larger} ${smaller}`;
    if (!shownOf.has(key)) {
      shownOf.set(
        key,
        carriesMore(sides, { larger: of.rows[larger]!, smaller: of.rows[smaller]!, of }),
      );
    }
    return shownOf.get(key);
  };
  let shown = everywhere;
  /** Keeps what no other setting makes needless; of settings that carry the same the first stays. */
  const keep = (
    order: readonly number[],
    outdoes: (a: number, b: number) => ShownRange | undefined,
  ) => {
    const kept: number[] = [];
    for (const setting of order) {
      const by = kept.map((other) => outdoes(other, setting)).find((range) => range !== undefined);
      if (by === undefined) kept.push(setting);
      else shown = overlap(shown, by);
    }
    return kept.sort((a, b) => a - b).map((setting) => each.settings[setting]!);
  };
  const rising = each.settings.map((_, setting) => setting);
  const raising = keep(rising, (other, setting) => beats(setting, other));
  const lowering = keep([...rising].reverse(), beats);
  return { ...each, lowering, raising, shown };
}

/** Links of a switch between the same two places, seen from the house outward. */
interface Side {
  readonly links: readonly { readonly index: number; readonly reversed: boolean }[];
  readonly first: AirState;
  readonly second: AirState;
  /** True where the outer place is a junction whose pressure is not known. */
  readonly chained: boolean;
}

function carriesMore(
  sides: readonly Side[],
  { larger, smaller, of }: { larger: Float64Array; smaller: Float64Array; of: SwitchLinks },
): ShownRange | undefined {
  let shown = everywhere;
  for (const side of sides) {
    if (side.links.every(({ index }) => larger[index] === smaller[index])) continue;
    const seen = (scales: Float64Array): readonly SeenLaw[] =>
      side.links.map(({ index, reversed }) => ({
        law: of.compiled.links[index]!.description.law,
        scale: scales[index]!,
        reversed,
      }));
    const range = carriesAtLeast({ larger: seen(larger), smaller: seen(smaller) }, side, of.needed);
    if (range === undefined) return undefined;
    // A fan may raise the pressure of its own junction; only a proof without end covers that.
    if (side.chained && range.fromPa > -Infinity) return undefined;
    shown = overlap(shown, range);
  }
  return shown;
}

function sidesOf({ links, compiled, places }: SwitchLinks): readonly Side[] | undefined {
  const sides = new Map<string, { links: Side['links'][number][]; from: string; to: string }>();
  for (const index of links) {
    const { from, to, fromHeightM, toHeightM, columnAir } = compiled.links[index]!.description;
    const outward = places.outward(from, to);
    if (outward === undefined) return undefined;
    const reversed = outward === 'reversed';
    const ends = reversed ? [to, from, toHeightM, fromHeightM] : [from, to, fromHeightM, toHeightM];
    const key = JSON.stringify([...ends, columnAir]);
    const side = sides.get(key) ?? { links: [], from: String(ends[0]), to: String(ends[1]) };
    side.links.push({ index, reversed });
    sides.set(key, side);
  }
  return [...sides.values()].map((side) => ({
    links: side.links,
    first: places.airOf(side.from),
    second: places.airOf(side.to),
    chained: !places.isBoundary(side.to) || !places.isRoom(side.from),
  }));
}

interface Places {
  isRoom(node: string): boolean;
  isBoundary(node: string): boolean;
  airOf(node: string): AirState;
  /** Which way along a link leads from a room to a place of known pressure; undefined where none does. */
  outward(from: string, to: string): 'along' | 'reversed' | undefined;
}

function placesOf(compiled: CompiledHouse, weather: HouseWeather): Places {
  const { house, network } = compiled;
  const { zoneIndex, boundaryIndex } = network;
  const rooms = new Set(house.zones.map(({ id }) => id));
  const neighbours = new Map<string, Set<string>>();
  for (const { description } of compiled.links) {
    for (const [one, other] of [
      [description.from, description.to],
      [description.to, description.from],
    ] as const) {
      neighbours.set(one, (neighbours.get(one) ?? new Set()).add(other));
    }
  }
  /** Follows a chain of junctions that have two neighbours each, away from a node. */
  const endOfChain = (node: string, before: string): string | undefined => {
    let [at, from] = [node, before];
    while (!boundaryIndex.has(at)) {
      const next = [...(neighbours.get(at) ?? [])].filter((other) => other !== from);
      if (rooms.has(at)) return at;
      if (next.length !== 1) return undefined;
      [at, from] = [next[0]!, at];
    }
    return at;
  };
  const known = (node: string | undefined): boolean =>
    node !== undefined && boundaryIndex.has(node);
  const room = (node: string | undefined): boolean => node !== undefined && rooms.has(node);
  return {
    isRoom: room,
    isBoundary: known,
    airOf(node) {
      const zone = zoneIndex.get(node);
      const air = zone === undefined ? weather.boundaryAir : weather.zoneAir;
      const place = zone ?? boundaryIndex.get(node) ?? 0;
      return {
        temperatureC: air.temperatureC[place] ?? 20,
        densityKgPerM3: air.densityKgPerM3[place] ?? 1.2,
      };
    },
    outward(from, to) {
      const [inner, outer] = [endOfChain(from, to), endOfChain(to, from)];
      if (room(inner) && known(outer)) return 'along';
      return room(outer) && known(inner) ? 'reversed' : undefined;
    },
  };
}

function changedLinks(rows: readonly Float64Array[]): readonly number[] {
  const first = rows[0] ?? new Float64Array(0);
  return Array.from(first.keys()).filter((link) => rows.some((row) => row[link] !== first[link]));
}

function separate(moved: readonly (readonly number[])[]): boolean {
  const all = moved.flat();
  return new Set(all).size === all.length;
}

/** Whether the factors of a whole state are those of its switches put together, tried on two far states. */
function composes(of: {
  readonly switches: readonly Switch[];
  readonly own: readonly (readonly Float64Array[])[];
  readonly moved: readonly (readonly number[])[];
  readonly scales: (settings: Readonly<Record<string, string>>) => Float64Array;
}): boolean {
  return [(count: number) => count - 1, (count: number) => Math.min(1, count - 1)].every((pick) => {
    const picked = of.switches.map(({ settings }) => pick(settings.length));
    const whole = of.scales(
      Object.fromEntries(
        of.switches.map(({ id, settings }, index) => [id, settings[picked[index]!]!]),
      ),
    );
    const composed = (of.own[0]?.[0] ?? whole).slice();
    of.moved.forEach((links, index) => {
      for (const link of links) composed[link] = of.own[index]![picked[index]!]![link]!;
    });
    return composed.every((scale, link) => scale === whole[link]);
  });
}

function overlap(one: ShownRange, other: ShownRange): ShownRange {
  return { fromPa: Math.max(one.fromPa, other.fromPa), toPa: Math.min(one.toPa, other.toPa) };
}
