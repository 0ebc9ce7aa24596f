import { inletAir } from '@evendraft/airflow';
import type { GraphVerdict, Kernel } from './kernel.js';
import type { BoundedArc } from './max-flow.js';
import { circulation } from './max-flow.js';

const unique: GraphVerdict = { verdict: 'unique', zones: [] };

/** Judges the graph of the active links, in `kernel.verdict`; a unique answer is kept until a link is switched. */
export function graphVerdict(kernel: Kernel): GraphVerdict {
  if (kernel.verdict?.verdict !== 'unique') kernel.verdict = judgeGraph(kernel);
  return kernel.verdict;
}

function judgeGraph(kernel: Kernel): GraphVerdict {
  const { zoneCount } = kernel;
  const tied = tiedComponents(kernel, (link) => kernel.twoWay[kernel.activeLink[link]!] === 1);
  const outdoors = zoneCount;
  let loose = false;
  for (let zone = 0; zone < zoneCount && !loose; zone++) loose = tied[zone] !== tied[outdoors];
  if (!loose) return unique;

  const arcs = boundedArcs(kernel, tied);
  const found = circulation(zoneCount + 1, arcs);
  const zonesIn = (set: ReadonlySet<number>): number[] =>
    places(zoneCount).filter((zone) => set.has(tied[zone]!));
  if (!found.feasible) {
    const surplus = found.surplus.has(tied[outdoors]!) ? [] : zonesIn(found.surplus);
    const deficit = found.deficit.has(tied[outdoors]!) ? [] : zonesIn(found.deficit);
    return {
      verdict: 'infeasible',
      zones: [...new Set([...surplus, ...deficit])],
      lacking: surplus.length === 0 ? 'an inlet' : deficit.length === 0 ? 'an outlet' : 'both',
    };
  }
  const reachable = tiedComponents(kernel, (link) => {
    const index = kernel.activeLink[link]!;
    const { leastKgPerS, mostKgPerS } = reachOf(kernel, index);
    return leastKgPerS < mostKgPerS;
  });
  const adrift = places(zoneCount).filter((zone) => reachable[zone] !== reachable[outdoors]);
  if (adrift.length > 0) return { verdict: 'not-unique', zones: adrift };
  return {
    verdict: 'open',
    zones: places(zoneCount).filter((zone) => tied[zone] !== tied[outdoors]),
  };
}

/** Zones that are not tied to a boundary by links whose flow answers at the pressures last evaluated. */
export function untiedZones(kernel: Kernel): number[] {
  const { zoneCount, links } = kernel;
  const tied = tiedComponents(kernel, (link) => links.state.slopeKgPerSPa[link]! > 0);
  return places(zoneCount).filter((zone) => tied[zone] !== tied[zoneCount]);
}

/** A representative of each node's component, all boundaries being one node at `zoneCount`. */
function tiedComponents(kernel: Kernel, ties: (link: number) => boolean): Int32Array {
  const { zoneCount, activeCount, activeFrom, activeTo } = kernel;
  const parent = new Int32Array(zoneCount + 1);
  for (let node = 0; node <= zoneCount; node++) parent[node] = node;
  const root = (node: number): number => {
    let top = node;
    while (parent[top] !== top) {
      parent[top] = parent[parent[top]!]!;
      top = parent[top]!;
    }
    return top;
  };
  for (let link = 0; link < activeCount; link++) {
    if (!ties(link)) continue;
    const from = root(Math.min(activeFrom[link]!, zoneCount));
    const to = root(Math.min(activeTo[link]!, zoneCount));
    parent[from] = to;
  }
  for (let node = 0; node <= zoneCount; node++) parent[node] = root(node);
  return parent;
}

/** Links between components, with the flows that their laws can carry. */
function boundedArcs(kernel: Kernel, component: Int32Array): BoundedArc[] {
  const { zoneCount, activeCount, activeLink, activeFrom, activeTo } = kernel;
  const arcs: BoundedArc[] = [];
  for (let link = 0; link < activeCount; link++) {
    const from = component[Math.min(activeFrom[link]!, zoneCount)]!;
    const to = component[Math.min(activeTo[link]!, zoneCount)]!;
    if (from === to) continue;
    const { leastKgPerS, mostKgPerS } = reachOf(kernel, activeLink[link]!);
    arcs.push({ from, to, least: leastKgPerS, most: mostKgPerS });
  }
  return arcs;
}

function reachOf(kernel: Kernel, link: number): { leastKgPerS: number; mostKgPerS: number } {
  const air = (node: number) =>
    inletAir({
      temperatureC: kernel.nodeTemperatureC[node]!,
      densityKgPerM3: kernel.nodeDensityKgPerM3[node]!,
    });
  const reach = kernel.laws[link]!.reach(
    kernel.descriptions[link]!,
    air(kernel.from[link]!),
    air(kernel.to[link]!),
  );
  const scale = kernel.scale[link]!;
  return { leastKgPerS: scale * reach.leastKgPerS, mostKgPerS: scale * reach.mostKgPerS };
}

function places(count: number): number[] {
  return Array.from({ length: count }, (_, place) => place);
}
