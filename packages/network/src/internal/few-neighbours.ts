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
  /** Eliminated zones and where their neighbours begin; beyond the last, room to gather those of another. */
  const zones = new Int32Array(zoneCount);
  const start = new Int32Array(zoneCount + 1);
  const neighbour = new Int32Array((zoneCount + 3) * mostNeighbours);
  const turnOf = new Int32Array(zoneCount);
  const seen = new Int32Array(zoneCount).fill(-1);
  let count = 0;
  let mark = 0;

  /** Writes the neighbours of a zone to an array, itself left out; stops soon after `most`. Returns where they end. */
  const gather = (zone: number, into: Int32Array, at: number, most: number): number => {
    let next = at;
    seen[zone] = ++mark;
    const end = bounds[zone]! + length[zone]!;
    for (let k = bounds[zone]!; k < end && next - at <= most; k++) {
      const item = lists[k]!;
      if (item >= 0) {
        if (seen[item] !== mark) into[next++] = item;
        seen[item] = mark;
        continue;
      }
      const turn = turnOf[~item]!;
      const last = start[turn + 1]!;
      for (let member = start[turn]!; member < last; member++) {
        const other = neighbour[member]!;
        if (seen[other] === mark) continue;
        seen[other] = mark;
        into[next++] = other;
      }
    }
    return next;
  };

  /** Takes out of the list of a zone what the clique of `gone`, whose items are marked, now says for it. */
  const replaceByClique = (zone: number, gone: number): void => {
    let end = bounds[zone]!;
    const last = end + length[zone]!;
    for (let k = end; k < last; k++) {
      const item = lists[k]!;
      if (seen[item >= 0 ? item : ~item] !== mark) lists[end++] = item;
    }
    lists[end++] = ~gone;
    length[zone] = end - bounds[zone]!;
  };

  const degree = length.slice();
  const waiting: number[][] = Array.from({ length: mostNeighbours + 1 }, () => []);
  const next = new Int32Array(mostNeighbours + 1);
  for (let zone = 0; zone < zoneCount; zone++) waiting[degree[zone]!]?.push(zone);
  for (let least = 0; least <= mostNeighbours;) {
    const zone = waiting[least]![next[least]!];
    if (zone === undefined) {
      least++;
      continue;
    }
    next[least]!++;
    // A zone waits once for every number of neighbours it has had.
    if (eliminated[zone] === 1 || degree[zone] !== least) continue;
    eliminated[zone] = 1;
    turnOf[zone] = count;
    zones[count] = zone;
    const begin = start[count]!;
    const end = gather(zone, neighbour, begin, mostNeighbours);
    start[++count] = end;
    // The cliques that it was in are marked like its neighbours: these need none of them in their lists any more.
    for (let k = bounds[zone]!; k < bounds[zone]! + length[zone]!; k++) {
      if (lists[k]! < 0) seen[~lists[k]!] = mark;
    }
    for (let k = begin; k < end; k++) replaceByClique(neighbour[k]!, zone);
    for (let k = begin; k < end; k++) {
      const other = neighbour[k]!;
      const now = gather(other, neighbour, end, mostNeighbours) - end;
      degree[other] = now;
      waiting[now]?.push(other);
      if (now < least) least = now;
    }
  }

  const core = new Int32Array(zoneCount - count);
  const number = new Int32Array(zoneCount);
  let bound = 0;
  for (let zone = 0, at = 0; zone < zoneCount; zone++) {
    if (eliminated[zone] === 1) continue;
    number[zone] = at;
    core[at++] = zone;
    bound += mostNeighbours * length[zone]!;
  }
  const coreStart = new Int32Array(core.length + 1);
  const coreNeighbour = new Int32Array(bound);
  let end = 0;
  for (let at = 0; at < core.length; at++) {
    const begin = end;
    end = gather(core[at]!, coreNeighbour, begin, zoneCount);
    for (let k = begin; k < end; k++) coreNeighbour[k] = number[coreNeighbour[k]!]!;
    coreStart[at + 1] = end;
  }
  return {
    zones: zones.subarray(0, count),
    start: start.subarray(0, count + 1),
    neighbour: neighbour.subarray(0, start[count]),
    core,
    coreGraph: { start: coreStart, neighbour: coreNeighbour.subarray(0, end) },
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
