import { gravity, type AirState } from '@evendraft/airflow';
import type { CompiledHouse, HouseWeather } from '@evendraft/house';
import type { EndAirs } from './compared-flows.js';

/** Links between two neighbouring places, seen from the room outward. */
export interface Stage {
  readonly links: readonly { readonly index: number; readonly reversed: boolean }[];
  readonly air: EndAirs;
}

/** A way from a room to a place of known pressure: one stage, or parts in series with junctions between. */
export interface Side {
  readonly stages: readonly Stage[];
  /** Pressure difference over the whole way less the pressure of the room at its floor [Pa]. */
  readonly offsetPa: number;
}

/**
 * The ways out of the house that a switch moves.
 *
 * @param moved - links whose factor the switch moves
 * @param compiled - the compiled house
 * @param weather - the weather, whose air and wind stand at its ends
 * @returns the ways; undefined where a link belongs to no way of its own from one room to a known pressure
 */
export function sidesOf(
  moved: readonly number[],
  compiled: CompiledHouse,
  weather: HouseWeather,
): readonly Side[] | undefined {
  const ways = wayFinder(compiled);
  const turning = new Set(compiled.twoStateLinks.map(({ index }) => index));
  const places = placesIn(compiled, weather);
  const direct = new Map<string, { way: readonly string[]; links: number[] }>();
  const chained = new Map<string, readonly string[]>();
  for (const index of moved) {
    const { from, to, fromHeightM, toHeightM, columnAir } = compiled.links[index]!.description;
    const way = ways(from, to);
    if (way === undefined || turning.has(index)) return undefined;
    if (way.length > 2) chained.set(way.join('\n'), way);
    else {
      // Side by side they see the same pressure only at the same heights.
      const heights = way[0] === from ? [fromHeightM, toHeightM] : [toHeightM, fromHeightM];
      const key = JSON.stringify([way, heights, columnAir]);
      const side = direct.get(key) ?? { way, links: [] };
      side.links.push(index);
      direct.set(key, side);
    }
  }
  const stage = (links: readonly number[], first: string, second: string): Stage => ({
    links: links.map((index) => ({
      index,
      reversed: compiled.links[index]!.description.from !== first,
    })),
    air: { first: places.airOf(first), second: places.airOf(second) },
  });
  const series = [...chained.values()].map((way) =>
    way.slice(1).map((second, place) => {
      const links = linksBetween(compiled, way[place]!, second);
      // What a column weighs that may turn is not one number.
      if (links === undefined || links.some((link) => turning.has(link))) return undefined;
      return stage(links, way[place]!, second);
    }),
  );
  const whole = series.filter((stages): stages is Stage[] => !stages.includes(undefined));
  if (whole.length < series.length) return undefined;
  const offset = (stages: readonly Stage[], end: string): number =>
    stages.reduce((sum, each) => sum + places.headOf(each), -places.pressureOf(end));
  return [
    ...[...direct.values()].map(({ way, links }) => {
      const stages = [stage(links, way[0]!, way[1]!)];
      return { stages, offsetPa: offset(stages, way[1]!) };
    }),
    ...whole.map((stages, index) => ({
      stages,
      offsetPa: offset(stages, [...chained.values()][index]!.at(-1)!),
    })),
  ];
}

interface Places {
  airOf(node: string): AirState;
  /** Known pressure of a boundary at its own height [Pa]. */
  pressureOf(boundary: string): number;
  /** What heights add to the pressure difference of a stage [Pa]. */
  headOf(stage: Stage): number;
}

function placesIn({ network, links }: CompiledHouse, weather: HouseWeather): Places {
  const { description, zoneIndex, boundaryIndex } = network;
  const airOf = (node: string): AirState => {
    const zone = zoneIndex.get(node);
    const air = zone === undefined ? weather.boundaryAir : weather.zoneAir;
    const place = zone ?? boundaryIndex.get(node)!;
    return {
      temperatureC: air.temperatureC[place]!,
      densityKgPerM3: air.densityKgPerM3[place]!,
    };
  };
  const outdoors = weather.outdoorAir.densityKgPerM3;
  /** Pressure at a height less that at the place's own height, against outdoors at the same height [Pa]. */
  const above = (node: string, heightM: number): number => {
    const zone = zoneIndex.get(node);
    const own =
      zone === undefined
        ? description.boundaries[boundaryIndex.get(node)!]!.heightM
        : description.zones[zone]!.heightM;
    return (outdoors - airOf(node).densityKgPerM3) * gravity * (heightM - own);
  };
  return {
    airOf,
    pressureOf: (boundary) => weather.boundaryPressuresPa[boundaryIndex.get(boundary)!]!,
    headOf({ links: [link] }) {
      const { from, to, fromHeightM, toHeightM } = links[link!.index]!.description;
      const rise = toHeightM - fromHeightM;
      const column =
        rise === 0 ? 0 : (outdoors - weather.columnDensityKgPerM3[link!.index]!) * gravity * rise;
      const along = above(from, fromHeightM) + column - above(to, toHeightM);
      return link!.reversed ? -along : along;
    },
  };
}

/** Every link between two places; undefined where they do not all stand at the same heights. */
function linksBetween(
  { links }: CompiledHouse,
  first: string,
  second: string,
): readonly number[] | undefined {
  const heights = new Set<string>();
  const found = links.flatMap(({ description }, index) => {
    const { from, to, fromHeightM, toHeightM, columnAir } = description;
    const along = from === first && to === second;
    if (!along && !(from === second && to === first)) return [];
    heights.add(
      JSON.stringify([...(along ? [fromHeightM, toHeightM] : [toHeightM, fromHeightM]), columnAir]),
    );
    return [index];
  });
  return heights.size === 1 ? found : undefined;
}

/** Finds the way through junctions that have two neighbours each, from a room to a known pressure. */
function wayFinder({
  house,
  links,
  network,
}: CompiledHouse): (one: string, other: string) => readonly string[] | undefined {
  const { boundaryIndex } = network;
  const rooms = new Set(house.zones.map(({ id }) => id));
  const neighbours = new Map<string, Set<string>>();
  for (const { description } of links) {
    const { from, to } = description;
    neighbours.set(from, (neighbours.get(from) ?? new Set()).add(to));
    neighbours.set(to, (neighbours.get(to) ?? new Set()).add(from));
  }
  /** Places from one on, away from another, up to the first that is no junction. */
  const onward = (start: string, before: string): readonly string[] => {
    const passed = [start];
    let [at, last] = [start, before];
    while (!rooms.has(at) && !boundaryIndex.has(at) && passed.length <= links.length) {
      const next = [...(neighbours.get(at) ?? [])].filter((node) => node !== last);
      if (next.length !== 1) break;
      [last, at] = [at, next[0]!];
      passed.push(at);
    }
    return passed;
  };
  return (one, other) => {
    const way = [...[...onward(one, other)].reverse(), ...onward(other, one)];
    const [start, end] = [way[0]!, way.at(-1)!];
    if (rooms.has(start) && boundaryIndex.has(end)) return way;
    return rooms.has(end) && boundaryIndex.has(start) ? way.reverse() : undefined;
  };
}
