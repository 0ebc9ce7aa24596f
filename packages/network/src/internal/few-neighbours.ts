import type { ZoneGraph } from './zone-order.js';

/** Zones are eliminated while they have at most so many neighbours: for floors of rooms this leaves the least work. */
const mostNeighbours = 7;

/** Zones of few neighbours, in the order of their elimination, and the graph of the zones that are left. */
export interface Elimination {
  readonly zones: Int32Array;
  /** Neighbours that each has left at its turn: bounds in `neighbour`, one a zone and one more. */
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
  /** The zones that are left. */
  readonly core: Int32Array;
  /** Their graph in their own numbers, each neighbour once. */
  readonly coreGraph: ZoneGraph;
}

/**
 * Eliminates zones from a graph, that of fewest neighbours first, while there is one of few. Whoever were neighbours
 * of an eliminated zone are neighbours of each other from then on.
 *
 * These new neighbours are not written out: an eliminated zone stays as a clique of those it had, and takes in the
 * cliques that it was in, so that no list ever grows (the quotient graph of George and Liu, Computer Solution of
 * Large Sparse Positive Definite Systems, 1981, from memory).
 *
 * @param graph - neighbours of every zone
 * @returns the order of elimination, and what is left
 */
export function eliminateFew(graph: ZoneGraph): Elimination {
  const quotient = quotientOf(graph);
  const { length, start, neighbour, turnOf, found } = quotient;
  const zoneCount = length.length;
  const zones = new Int32Array(zoneCount);
  const degree = length.slice();
  const waiting: number[][] = Array.from({ length: mostNeighbours + 1 }, () => []);
  const next = new Int32Array(mostNeighbours + 1);
  for (let zone = 0; zone < zoneCount; zone++) waiting[degree[zone]!]?.push(zone);
  let count = 0;
  for (let least = 0; least <= mostNeighbours;) {
    const zone = waiting[least]![next[least]!];
    if (zone === undefined) {
      least++;
      continue;
    }
    next[least]!++;
    // A zone waits once for every number of neighbours it has had.
    if (turnOf[zone]! >= 0 || degree[zone] !== least) continue;
    const begin = start[count]!;
    const end = begin + gather(quotient, zone, mostNeighbours);
    for (let k = begin; k < end; k++) neighbour[k] = found[k - begin]!;
    turnOf[zone] = count;
    zones[count++] = zone;
    start[count] = end;
    becomeClique(quotient, zone);
    for (let k = begin; k < end; k++) {
      const other = neighbour[k]!;
      const now = gather(quotient, other, mostNeighbours);
      degree[other] = now;
      waiting[now]?.push(other);
      if (now < least) least = now;
    }
  }
  return {
    zones: zones.subarray(0, count),
    start: start.subarray(0, count + 1),
    neighbour: neighbour.subarray(0, start[count]),
    ...graphOfRest(quotient, zoneCount - count),
  };
}

/** What each zone is next to: zones, and cliques that an eliminated zone ~k stands for. */
interface QuotientGraph {
  /** Lists of zones and cliques, one a zone: where each begins, and how long it is. */
  readonly bounds: Int32Array;
  readonly lists: Int32Array;
  readonly length: Int32Array;
  /** The turn at which a zone was eliminated, or −1; by turn, bounds of its clique in `neighbour`. */
  readonly turnOf: Int32Array;
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
  /** The neighbours gathered last, and who was seen at that. */
  readonly found: Int32Array;
  readonly seen: Int32Array;
  mark: number;
}

function quotientOf(graph: ZoneGraph): QuotientGraph {
  const zoneCount = graph.start.length - 1;
  return {
    bounds: graph.start,
    ...withoutRepeats(graph),
    turnOf: new Int32Array(zoneCount).fill(-1),
    start: new Int32Array(zoneCount + 1),
    neighbour: new Int32Array(zoneCount * mostNeighbours),
    found: new Int32Array(zoneCount + mostNeighbours),
    seen: new Int32Array(zoneCount),
    mark: 0,
  };
}

/** Finds the neighbours of a zone; stops soon after `most`. Returns how many. */
function gather(quotient: QuotientGraph, zone: number, most: number): number {
  const { bounds, lists, length, turnOf, start, neighbour, found, seen } = quotient;
  const mark = ++quotient.mark;
  seen[zone] = mark;
  let count = 0;
  const end = bounds[zone]! + length[zone]!;
  for (let k = bounds[zone]!; k < end && count <= most; k++) {
    const item = lists[k]!;
    if (item >= 0) {
      if (seen[item] !== mark) found[count++] = item;
      seen[item] = mark;
      continue;
    }
    const turn = turnOf[~item]!;
    const last = start[turn + 1]!;
    for (let member = start[turn]!; member < last; member++) {
      const other = neighbour[member]!;
      if (seen[other] === mark) continue;
      seen[other] = mark;
      found[count++] = other;
    }
  }
  return count;
}

/** Puts a zone that has just been eliminated into the lists of its neighbours, for all that it now stands for. */
function becomeClique(quotient: QuotientGraph, zone: number): void {
  const { bounds, lists, length, turnOf, start, neighbour, seen, mark } = quotient;
  // Beside its neighbours, which are marked, these are the cliques that it was in.
  for (let k = bounds[zone]!; k < bounds[zone]! + length[zone]!; k++) {
    if (lists[k]! < 0) seen[~lists[k]!] = mark;
  }
  const turn = turnOf[zone]!;
  for (let member = start[turn]!; member < start[turn + 1]!; member++) {
    const other = neighbour[member]!;
    let end = bounds[other]!;
    const last = end + length[other]!;
    for (let k = end; k < last; k++) {
      const item = lists[k]!;
      if (seen[item >= 0 ? item : ~item] !== mark) lists[end++] = item;
    }
    lists[end++] = ~zone;
    length[other] = end - bounds[other]!;
  }
}

/** The zones that are left, and their graph in their own numbers. */
function graphOfRest(
  quotient: QuotientGraph,
  coreCount: number,
): Pick<Elimination, 'core' | 'coreGraph'> {
  const { length, turnOf, found } = quotient;
  const zoneCount = length.length;
  const core = new Int32Array(coreCount);
  const number = new Int32Array(zoneCount);
  let most = 0;
  for (let zone = 0, at = 0; zone < zoneCount; zone++) {
    if (turnOf[zone]! >= 0) continue;
    number[zone] = at;
    core[at++] = zone;
    most += mostNeighbours * length[zone]!;
  }
  const start = new Int32Array(coreCount + 1);
  const neighbour = new Int32Array(most);
  let end = 0;
  for (let at = 0; at < coreCount; at++) {
    const count = gather(quotient, core[at]!, zoneCount);
    for (let k = 0; k < count; k++) neighbour[end++] = number[found[k]!]!;
    start[at + 1] = end;
  }
  return { core, coreGraph: { start, neighbour: neighbour.subarray(0, end) } };
}

/** The lists of neighbours with each named once, and their lengths. */
function withoutRepeats({ start, neighbour }: ZoneGraph): {
  readonly lists: Int32Array;
  readonly length: Int32Array;
} {
  const zoneCount = start.length - 1;
  const lists = new Int32Array(neighbour.length);
  const length = new Int32Array(zoneCount);
  const seenFor = new Int32Array(zoneCount).fill(-1);
  for (let zone = 0; zone < zoneCount; zone++) {
    seenFor[zone] = zone;
    let end = start[zone]!;
    for (let k = end; k < start[zone + 1]!; k++) {
      const other = neighbour[k]!;
      if (seenFor[other] === zone) continue;
      seenFor[other] = zone;
      lists[end++] = other;
    }
    length[zone] = end - start[zone]!;
  }
  return { lists, length };
}
