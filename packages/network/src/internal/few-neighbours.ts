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
  const zoneCount = graph.start.length - 1;
  const bounds = graph.start;
  const { lists, length } = withoutRepeats(graph);
  const eliminated = new Uint8Array(zoneCount);
  const zones: number[] = [];
  const start: number[] = [0];
  const neighbour: number[] = [];
  const turnOf = new Int32Array(zoneCount);
  const seen = new Int32Array(zoneCount).fill(-1);
  let mark = 0;

  /** Appends the neighbours of a zone to a list, itself left out, until there are too many. */
  const gather = (zone: number, into: number[], most: number): void => {
    const begin = into.length;
    seen[zone] = ++mark;
    const end = bounds[zone]! + length[zone]!;
    for (let k = bounds[zone]!; k < end && into.length - begin <= most; k++) {
      const item = lists[k]!;
      if (item >= 0) {
        if (seen[item] !== mark) into.push(item);
        seen[item] = mark;
        continue;
      }
      const turn = turnOf[~item]!;
      for (let member = start[turn]!; member < start[turn + 1]!; member++) {
        const other = neighbour[member]!;
        if (seen[other] !== mark) into.push(other);
        seen[other] = mark;
      }
    }
  };

  /** Takes out of the list of a zone what the clique of `gone`, whose items are marked, now says for it. */
  const replaceByClique = (zone: number, gone: number): void => {
    let end = bounds[zone]!;
    for (let k = end; k < bounds[zone]! + length[zone]!; k++) {
      const item = lists[k]!;
      if (seen[item >= 0 ? item : ~item] !== mark) lists[end++] = item;
    }
    lists[end++] = ~gone;
    length[zone] = end - bounds[zone]!;
  };

  const degree = new Int32Array(zoneCount);
  const waiting: number[][] = Array.from({ length: mostNeighbours + 1 }, () => []);
  const next = new Int32Array(mostNeighbours + 1);
  const scratch: number[] = [];
  const enrol = (zone: number): void => {
    scratch.length = 0;
    gather(zone, scratch, mostNeighbours);
    degree[zone] = scratch.length;
    waiting[scratch.length]?.push(zone);
  };
  for (let zone = 0; zone < zoneCount; zone++) enrol(zone);
  for (let least = 0; least <= mostNeighbours;) {
    const zone = waiting[least]![next[least]!++];
    if (zone === undefined) {
      next[least]!--;
      least++;
      continue;
    }
    // A zone waits once for every number of neighbours it has had.
    if (eliminated[zone] === 1 || degree[zone] !== least) continue;
    eliminated[zone] = 1;
    turnOf[zone] = zones.length;
    const begin = neighbour.length;
    gather(zone, neighbour, mostNeighbours);
    // The cliques that it was in are marked with its neighbours: these lists need none of them any more.
    for (let k = bounds[zone]!; k < bounds[zone]! + length[zone]!; k++) {
      if (lists[k]! < 0) seen[~lists[k]!] = mark;
    }
    zones.push(zone);
    start.push(neighbour.length);
    for (let k = begin; k < neighbour.length; k++) replaceByClique(neighbour[k]!, zone);
    for (let k = begin; k < neighbour.length; k++) {
      enrol(neighbour[k]!);
      least = Math.min(least, degree[neighbour[k]!]!);
    }
  }

  const core: number[] = [];
  const coreStart: number[] = [0];
  const coreNeighbour: number[] = [];
  const number = new Int32Array(zoneCount);
  for (let zone = 0; zone < zoneCount; zone++) {
    if (eliminated[zone] === 1) continue;
    number[zone] = core.length;
    core.push(zone);
    gather(zone, coreNeighbour, zoneCount);
    coreStart.push(coreNeighbour.length);
  }
  return {
    zones: Int32Array.from(zones),
    start: Int32Array.from(start),
    neighbour: Int32Array.from(neighbour),
    core: Int32Array.from(core),
    coreGraph: {
      start: Int32Array.from(coreStart),
      neighbour: Int32Array.from(coreNeighbour, (zone) => number[zone]!),
    },
  };
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
