/**
 * An order of the zones that keeps connected zones close together: reverse Cuthill–McKee.
 * Source: Cuthill and McKee, Proc. 24th ACM National Conference, 1969; reversed by George, 1971 (from memory).
 *
 * @param neighbours - for each zone, the zones it shares a link with, each once
 * @returns the zones in their new order
 */
export function zoneOrder(neighbours: readonly (readonly number[])[]): number[] {
  const degree = neighbours.map((list) => list.length);
  const placed = new Uint8Array(neighbours.length);
  const order: number[] = [];
  const byDegree = neighbours.map((_, zone) => zone).sort((a, b) => degree[a]! - degree[b]!);
  for (const seed of byDegree) {
    if (placed[seed]) continue;
    const start = farthest(neighbours, seed);
    placed[start] = 1;
    order.push(start);
    for (let next = order.length - 1; next < order.length; next++) {
      const fresh = neighbours[order[next]!]!.filter((zone) => !placed[zone]);
      fresh.sort((a, b) => degree[a]! - degree[b]!);
      for (const zone of fresh) placed[zone] = 1;
      order.push(...fresh);
    }
  }
  return order.reverse();
}

/** A zone at the rim of the component: from the seed, twice to the last level's zone of least degree. */
function farthest(neighbours: readonly (readonly number[])[], seed: number): number {
  let rim = seed;
  for (let turn = 0; turn < 2; turn++) {
    const seen = new Set([rim]);
    let level = [rim];
    for (;;) {
      const next: number[] = [];
      for (const zone of level) {
        for (const other of neighbours[zone]!) {
          if (!seen.has(other)) {
            seen.add(other);
            next.push(other);
          }
        }
      }
      if (next.length === 0) break;
      level = next;
    }
    rim = level.reduce((best, zone) =>
      neighbours[zone]!.length < neighbours[best]!.length ? zone : best,
    );
  }
  return rim;
}
