import type { CompiledHouse } from '@evendraft/house';

/** The zone end of a link, and where the path that it belongs to leads. */
export interface FarEnd {
  readonly zone: string;
  /** The zone at the other end; absent where the path leads out of the house. */
  readonly otherZone?: string;
  /** At the zone, above the datum [m]. */
  readonly heightM: number;
  /** Whether the link's own direction is out of the zone. */
  readonly outward: boolean;
}

/**
 * For each link that touches a zone of the house, where its path leads; parts in the middle of a path have none.
 *
 * A path between two zones is told at the one that comes first in the house.
 *
 * @param compiled - the compiled house
 * @returns one entry a link, in the network's order
 */
export function farEnds({
  house,
  links,
  junctions,
}: CompiledHouse): readonly (FarEnd | undefined)[] {
  const places = new Map(house.zones.map(({ id }, index) => [id, index]));
  const between = new Set(junctions.map(({ id }) => id));
  const neighbours = new Map<string, Set<string>>();
  const join = (one: string, other: string): void => {
    if (!between.has(one)) return;
    const known = neighbours.get(one) ?? new Set();
    neighbours.set(one, known.add(other));
  };
  for (const { description } of links) {
    join(description.from, description.to);
    join(description.to, description.from);
  }
  return links.map(({ description }) => {
    const { from, to, fromHeightM, toHeightM } = description;
    const outward = places.has(from);
    const zone = outward ? from : to;
    const place = places.get(zone);
    if (place === undefined) return undefined;
    const ends = terminals(outward ? to : from, zone, neighbours);
    const others = ends.filter((end) => places.has(end));
    const [otherZone] = others;
    const single = ends.length === 1 && otherZone !== undefined;
    if (single && between.has(outward ? to : from) && places.get(otherZone)! < place) {
      return undefined;
    }
    return {
      zone,
      ...(single ? { otherZone } : {}),
      heightM: outward ? fromHeightM : toHeightM,
      outward,
    };
  });
}

/** Zones and boundaries that are reached from a node through junctions, but for the zone where one starts. */
function terminals(
  start: string,
  zone: string,
  neighbours: ReadonlyMap<string, ReadonlySet<string>>,
): readonly string[] {
  const seen = new Set([start]);
  const found = new Set<string>();
  for (const node of seen) {
    const next = neighbours.get(node);
    if (next === undefined) found.add(node);
    else for (const each of next) seen.add(each);
  }
  found.delete(zone);
  return [...found];
}
