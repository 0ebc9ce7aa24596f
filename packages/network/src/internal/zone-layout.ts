import { eliminateFew } from './few-neighbours.js';
import type { ZoneGraph } from './zone-order.js';
import { zoneGraph, zoneOrder } from './zone-order.js';

/** Networks of fewer zones are kept as one skyline. */
const fewestToEliminate = 64;

/** Where every zone is placed, and the pattern of the matrix that follows. */
export interface ZoneLayout {
  /** Place of each zone: those of the skyline first, then those that are eliminated before, in their order. */
  readonly place: Int32Array;
  /** First column kept in each row of the skyline. */
  readonly first: Int32Array;
  /** Places of the neighbours of each eliminated zone at its turn: bounds in `neighbour`, one a zone and one more. */
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
}

/**
 * Places the zones so that factors of their matrix cost little: in large networks zones of few neighbours are
 * eliminated first, and the others are ordered to a narrow skyline.
 *
 * @param zoneCount - number of zones
 * @param from - zone of one end of each link; from `zoneCount` on a boundary
 * @param to - that of the other
 * @returns places and pattern
 */
export function zoneLayout(zoneCount: number, from: Int32Array, to: Int32Array): ZoneLayout {
  const graph = zoneGraph(zoneCount, from, to);
  const place = new Int32Array(zoneCount);
  if (zoneCount < fewestToEliminate) {
    zoneOrder(graph).forEach((zone, at) => (place[zone] = at));
    const none = new Int32Array(0);
    return { place, first: firstColumns(graph, place), start: new Int32Array(1), neighbour: none };
  }
  const { zones, start, neighbour, core, coreGraph } = eliminateFew(graph);
  const corePlace = new Int32Array(core.length);
  zoneOrder(coreGraph).forEach((zone, at) => (corePlace[zone] = at));
  corePlace.forEach((at, zone) => (place[core[zone]!] = at));
  zones.forEach((zone, turn) => (place[zone] = core.length + turn));
  return {
    place,
    first: firstColumns(coreGraph, corePlace),
    start,
    neighbour: neighbour.map((zone) => place[zone]!),
  };
}

/** The least place among each zone and its neighbours, by place. */
function firstColumns({ start, neighbour }: ZoneGraph, place: Int32Array): Int32Array {
  const first = new Int32Array(place.length);
  for (let zone = 0; zone < place.length; zone++) {
    let least = place[zone]!;
    for (let k = start[zone]!; k < start[zone + 1]!; k++) {
      const other = place[neighbour[k]!]!;
      if (other < least) least = other;
    }
    first[place[zone]!] = least;
  }
  return first;
}
