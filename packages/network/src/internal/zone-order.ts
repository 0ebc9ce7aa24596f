/** Neighbours of every zone, each as often as it shares a link: bounds in `neighbour`, one a zone and one more. */
export interface ZoneGraph {
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
}

/** The graph of the zones from the ends of links; ends from `zoneCount` on are boundaries. */
export function zoneGraph(zoneCount: number, from: Int32Array, to: Int32Array): ZoneGraph {
  const start = new Int32Array(zoneCount + 1);
  for (let link = 0; link < from.length; link++) {
    if (from[link]! >= zoneCount || to[link]! >= zoneCount) continue;
    start[from[link]!]!++;
    start[to[link]!]!++;
  }
  let sum = 0;
  for (let zone = 0; zone <= zoneCount; zone++) {
    sum += start[zone]!;
    start[zone] = sum;
  }
  const neighbour = new Int32Array(sum);
  // Filled from the end of each list, which leaves the bounds at its beginning.
  for (let link = from.length - 1; link >= 0; link--) {
    const [a, b] = [from[link]!, to[link]!];
    if (a >= zoneCount || b >= zoneCount) continue;
    neighbour[--start[a]!] = b;
    neighbour[--start[b]!] = a;
  }
  return { start, neighbour };
}

/**
 * An order of the zones that keeps connected zones close together: reverse Cuthill–McKee.
 * Source: Cuthill and McKee, Proc. 24th ACM National Conference, 1969; reversed by George, 1971 (from memory).
 *
 * @param graph - neighbours of every zone
 * @returns the zones in their new order
 */
export function zoneOrder({ start, neighbour }: ZoneGraph): Int32Array {
  const zoneCount = start.length - 1;
  const degree = (zone: number): number => start[zone + 1]! - start[zone]!;
  const order = new Int32Array(zoneCount);
  const placed = new Uint8Array(zoneCount);
  const turnSeen = new Int32Array(zoneCount).fill(-1);
  let count = 0;
  let turn = 0;

  /** A zone at the rim of the component: from the seed, twice to the last level's zone of least degree. */
  const farthest = (seed: number): number => {
    let rim = seed;
    // The free end of the order serves as the queue.
    const queue = order.subarray(count);
    for (let repeat = 0; repeat < 2; repeat++, turn++) {
      turnSeen[rim] = turn;
      queue[0] = rim;
      let begin = 0;
      let end = 1;
      for (let after = 1; ; begin = end, end = after) {
        for (let next = begin; next < end; next++) {
          const zone = queue[next]!;
          for (let k = start[zone]!; k < start[zone + 1]!; k++) {
            const other = neighbour[k]!;
            if (turnSeen[other] === turn) continue;
            turnSeen[other] = turn;
            queue[after++] = other;
          }
        }
        if (after === end) break;
      }
      rim = queue[begin]!;
      for (let k = begin + 1; k < end; k++) if (degree(queue[k]!) < degree(rim)) rim = queue[k]!;
    }
    return rim;
  };

  for (const seed of byDegree(start)) {
    if (placed[seed]) continue;
    const first = farthest(seed);
    placed[first] = 1;
    order[count] = first;
    let next = count++;
    for (; next < count; next++) {
      const zone = order[next]!;
      const fresh = count;
      for (let k = start[zone]!; k < start[zone + 1]!; k++) {
        const other = neighbour[k]!;
        if (placed[other]) continue;
        placed[other] = 1;
        order[count++] = other;
      }
      sortByDegree(order, fresh, count, degree);
    }
  }
  return order.reverse();
}

/** The zones, those of few neighbours first: a counting sort. */
function byDegree(start: Int32Array): Int32Array {
  const zoneCount = start.length - 1;
  const ends = new Int32Array(start[zoneCount]! + 2);
  for (let zone = 0; zone < zoneCount; zone++) ends[start[zone + 1]! - start[zone]! + 1]!++;
  for (let degree = 1; degree < ends.length; degree++) ends[degree]! += ends[degree - 1]!;
  const sorted = new Int32Array(zoneCount);
  for (let zone = 0; zone < zoneCount; zone++) {
    sorted[ends[start[zone + 1]! - start[zone]!]!++] = zone;
  }
  return sorted;
}

/** Insertion, because the lists are short; a hub's long list is left to the library. */
// eslint-disable-next-line max-params -- once a zone
function sortByDegree(
  order: Int32Array,
  begin: number,
  end: number,
  degree: (zone: number) => number,
): void {
  if (end - begin > 64) {
    order.subarray(begin, end).sort((a, b) => degree(a) - degree(b));
    return;
  }
  for (let next = begin + 1; next < end; next++) {
    const zone = order[next]!;
    let at = next;
    for (; at > begin && degree(order[at - 1]!) > degree(zone); at--) order[at] = order[at - 1]!;
    order[at] = zone;
  }
}
