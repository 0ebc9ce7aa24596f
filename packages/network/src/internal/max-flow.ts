/** An arc that can carry a flow between two bounds. */
export interface BoundedArc {
  readonly from: number;
  readonly to: number;
  /** May be −Infinity. */
  readonly least: number;
  /** May be Infinity. */
  readonly most: number;
}

/** Whether flows within their bounds can balance every node, and if not, where air is left over or lacking. */
export interface Circulation {
  readonly feasible: boolean;
  /** Nodes that take in more than they can lose. */
  readonly surplus: ReadonlySet<number>;
  /** Nodes that lose more than they can take in. */
  readonly deficit: ReadonlySet<number>;
}

/**
 * Looks for a circulation within bounds, by augmenting along shortest paths from nodes with surplus to nodes
 * with deficit. Source: Edmonds and Karp, J. ACM 19 (1972) 248-264, from memory.
 */
export function circulation(nodeCount: number, arcs: readonly BoundedArc[]): Circulation {
  const finite = arcs
    .flatMap((arc) => [Math.abs(arc.least), Math.abs(arc.most)])
    .filter((bound) => bound < Infinity);
  const total = finite.reduce((sum, bound) => sum + bound, 0);
  const unlimited = 4 * total + 1;
  const negligible = 1e-12 * total;

  const balance = new Float64Array(nodeCount);
  const forward: number[] = [];
  const backward: number[] = [];
  const leaving: number[][] = Array.from({ length: nodeCount }, () => []);
  const entering: number[][] = Array.from({ length: nodeCount }, () => []);
  arcs.forEach((arc, index) => {
    const least = Math.max(arc.least, -unlimited);
    const most = Math.min(arc.most, unlimited);
    const flow = Math.min(Math.max(0, least), most);
    forward.push(most - flow);
    backward.push(flow - least);
    balance[arc.to]! += flow;
    balance[arc.from]! -= flow;
    leaving[arc.from]!.push(index);
    entering[arc.to]!.push(index);
  });

  /** Shortest way from a surplus to a deficit; or, when there is none, every node reached. */
  const search = (): { reached: Map<number, number>; end: number | undefined } => {
    const reached = new Map<number, number>();
    const queue: number[] = [];
    balance.forEach((surplus, node) => {
      if (surplus > negligible) {
        reached.set(node, 0);
        queue.push(node);
      }
    });
    for (const node of queue) {
      if (balance[node]! < -negligible) return { reached, end: node };
      // An arc walked forward is kept as index + 1, one walked backward as −(index + 1).
      const visit = (other: number, way: number): void => {
        if (reached.has(other)) return;
        reached.set(other, way);
        queue.push(other);
      };
      for (const index of leaving[node]!) {
        if (forward[index]! > negligible) visit(arcs[index]!.to, index + 1);
      }
      for (const index of entering[node]!) {
        if (backward[index]! > negligible) visit(arcs[index]!.from, -(index + 1));
      }
    }
    return { reached, end: undefined };
  };

  for (;;) {
    const { reached, end } = search();
    if (end === undefined) {
      const deficit = new Set<number>();
      balance.forEach((surplus, node) => {
        if (surplus < -negligible) deficit.add(node);
      });
      const feasible = reached.size === 0 && deficit.size === 0;
      return {
        feasible,
        surplus: new Set(reached.keys()),
        deficit: feasible ? deficit : ancestors({ deficit, arcs, forward, backward, negligible }),
      };
    }
    const path: number[] = [];
    let start = end;
    for (let way = reached.get(start)!; way !== 0; way = reached.get(start)!) {
      path.push(way);
      const arc = arcs[Math.abs(way) - 1]!;
      start = way > 0 ? arc.from : arc.to;
    }
    let amount = Math.min(balance[start]!, -balance[end]!);
    for (const way of path) {
      amount = Math.min(amount, way > 0 ? forward[way - 1]! : backward[-way - 1]!);
    }
    balance[start]! -= amount;
    balance[end]! += amount;
    for (const way of path) {
      const index = Math.abs(way) - 1;
      forward[index]! -= Math.sign(way) * amount;
      backward[index]! += Math.sign(way) * amount;
    }
  }
}

interface Residual {
  readonly deficit: ReadonlySet<number>;
  readonly arcs: readonly BoundedArc[];
  readonly forward: readonly number[];
  readonly backward: readonly number[];
  readonly negligible: number;
}

/** Nodes from which more flow could still reach a deficit. */
function ancestors({ deficit, arcs, forward, backward, negligible }: Residual): Set<number> {
  const found = new Set(deficit);
  for (let grown = true; grown;) {
    grown = false;
    arcs.forEach((arc, index) => {
      if (forward[index]! > negligible && found.has(arc.to) && !found.has(arc.from)) {
        found.add(arc.from);
        grown = true;
      }
      if (backward[index]! > negligible && found.has(arc.from) && !found.has(arc.to)) {
        found.add(arc.to);
        grown = true;
      }
    });
  }
  return found;
}
