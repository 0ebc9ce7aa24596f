import { houseScenario, type CompiledHouse, type House, type HouseWeather } from '@evendraft/house';
import { carriesAtLeast, type ShownRange } from './carries-at-least.js';
import type { SeenLaw } from './compared-flows.js';
import { seriesCarriesAtLeast } from './series-carries-at-least.js';
import { sidesOf, type Side, type Stage } from './switch-sides.js';
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
  /** Where what was shown holds: the pressure of every room at its floor must stay in it [Pa]. */
  readonly shown: ShownRange;
}

const everywhere: ShownRange = { fromPa: -Infinity, toPa: Infinity };

/**
 * Orders the settings of every switch by what they carry out of the house, law against law.
 *
 * Premise: with everything else held, a setting whose links carry outward at least what another's carry, at
 * every pressure difference, gives no higher pressure in any zone. A link counts where one end is a zone of
 * the house and the other a place of known pressure, straight or through parts in series of its own.
 * What is not shown is not ordered, and then every setting stays.
 *
 * @param place - house, weather whose air the laws carry, airtightness case
 * @param needed - pressures of rooms that must be covered
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
  const changed = own.map((rows) => changedLinks(rows));
  const independent = separate(changed) && composes({ switches, own, moved: changed, scales });
  return switches.map((each, index) => {
    if (!independent) return unordered(each);
    const of = { rows: own[index]!, links: changed[index]!, compiled, weather, needed };
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
  readonly weather: HouseWeather;
  readonly needed: ShownRange;
}

function orderOne(each: Switch, of: SwitchLinks): OrderedSwitch | undefined {
  const sides = sidesOf(of.links, of.compiled, of.weather);
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

function carriesMore(
  sides: readonly Side[],
  { larger, smaller, of }: { larger: Float64Array; smaller: Float64Array; of: SwitchLinks },
): ShownRange | undefined {
  let shown = everywhere;
  for (const { stages, offsetPa } of sides) {
    const links = stages.flatMap((stage) => stage.links);
    if (links.every(({ index }) => larger[index] === smaller[index])) continue;
    const compared = stages.map((stage) => ({
      larger: seenLaws(of.compiled, stage, larger),
      smaller: seenLaws(of.compiled, stage, smaller),
      air: stage.air,
    }));
    const needed = moved(of.needed, offsetPa);
    const [only] = compared;
    const range =
      compared.length === 1 && only !== undefined
        ? carriesAtLeast(only, only.air, needed)
        : seriesCarriesAtLeast(compared, needed);
    if (range === undefined) return undefined;
    shown = overlap(shown, moved(range, -offsetPa));
  }
  return shown;
}

function moved({ fromPa, toPa }: ShownRange, byPa: number): ShownRange {
  return { fromPa: fromPa + byPa, toPa: toPa + byPa };
}

function seenLaws(
  compiled: CompiledHouse,
  { links }: Stage,
  scales: Float64Array,
): readonly SeenLaw[] {
  return links.map(({ index, reversed }) => ({
    law: compiled.links[index]!.description.law,
    scale: scales[index]!,
    reversed,
  }));
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
