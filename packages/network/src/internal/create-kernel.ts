import type { FlowLaw, FlowLawDescription } from '@evendraft/airflow';
import { flowAt, flowLawOf, inletAir } from '@evendraft/airflow';
import type { LinkDescription, NetworkDescription } from '../network-description.js';
import type { DescribedNumbers, Kernel, KernelGroup } from './kernel.js';
import { createSkyline } from './skyline.js';
import { zoneOrder } from './zone-order.js';

/** Lays a checked description out in arrays. The scenario is set afterwards. */
export function createKernel(
  description: NetworkDescription,
  zoneIndex: ReadonlyMap<string, number>,
  boundaryIndex: ReadonlyMap<string, number>,
): Kernel {
  const { zones, boundaries, links } = description;
  const zoneCount = zones.length;
  const nodeCount = zoneCount + boundaries.length;
  const linkCount = links.length;

  const ends = (link: LinkDescription): [number, number] => [
    zoneIndex.get(link.from) ?? zoneCount + (boundaryIndex.get(link.from) ?? 0),
    zoneIndex.get(link.to) ?? zoneCount + (boundaryIndex.get(link.to) ?? 0),
  ];
  const order = zoneOrder(neighboursOf(zoneCount, links.map(ends)));
  const place = new Int32Array(nodeCount);
  order.forEach((zone, index) => (place[zone] = index));
  for (let node = zoneCount; node < nodeCount; node++) place[node] = node;

  const from = Int32Array.from(links, (link) => place[ends(link)[0]]!);
  const to = Int32Array.from(links, (link) => place[ends(link)[1]]!);
  const first = Int32Array.from({ length: zoneCount }, (_, row) => row);
  let interior = 0;
  for (let link = 0; link < linkCount; link++) {
    const low = Math.min(from[link]!, to[link]!);
    const high = Math.max(from[link]!, to[link]!);
    if (high >= zoneCount) continue;
    interior++;
    first[high] = Math.min(first[high]!, low);
  }

  const laws = links.map((link) => flowLawOf(link.law));
  const reference = { temperatureC: 20, densityKgPerM3: 1.2041 };
  const air = inletAir(reference);
  return {
    zoneCount,
    boundaryCount: boundaries.length,
    linkCount,
    placeOfZone: place.slice(0, zoneCount),
    from,
    to,
    laws,
    descriptions: links.map((link) => link.law),
    twoWay: Uint8Array.from(links, (link, index) => {
      const reach = laws[index]!.reach(link.law, air, air);
      const unbounded = reach.leastKgPerS === -Infinity && reach.mostKgPerS === Infinity;
      return reach.strict && unbounded ? 1 : 0;
    }),
    groups: groupsOf(links, laws),

    described: describedNumbers(description, place, { from, to }),
    nodeTemperatureC: new Float64Array(nodeCount).fill(NaN),
    nodeDensityKgPerM3: new Float64Array(nodeCount).fill(NaN),
    nodeLogDensityRatio: new Float64Array(nodeCount),
    nodeLogViscosityRatio: new Float64Array(nodeCount),
    scale: new Float64Array(linkCount).fill(NaN),
    drivePa: new Float64Array(linkCount),
    preparation: {
      from: inletAir(reference),
      to: inletAir(reference),
      scale: 1,
      records: new Float64Array(0),
      at: 0,
    },

    inForce: { zoneAir: true, boundaryAir: true, scale: true, drives: true, pressures: true },
    verdict: undefined,
    activeCount: 0,
    activeLink: new Int32Array(linkCount),
    activePlace: new Int32Array(linkCount).fill(-1),
    activeFrom: new Int32Array(linkCount),
    activeTo: new Int32Array(linkCount),
    activeDrivePa: new Float64Array(linkCount),
    state: {
      pressureDifferencePa: new Float64Array(linkCount),
      massFlowKgPerS: new Float64Array(linkCount),
      slopeKgPerSPa: new Float64Array(linkCount),
    },
    incidentStart: new Int32Array(2 * zoneCount + 1),
    incident: new Int32Array(2 * linkCount),
    interiorCount: 0,
    interiorLink: new Int32Array(interior),
    interiorSlot: new Int32Array(interior),
    chordSlope: new Float64Array(linkCount),
    chordFlow: new Float64Array(linkCount),

    iteration: {
      converged: false,
      iterations: 0,
      lawSweeps: 0,
      excess: 0,
      leastExcess: 0,
      credit: 0,
    },

    pressure: new Float64Array(nodeCount),
    trial: new Float64Array(nodeCount),
    step: new Float64Array(zoneCount),
    residual: new Float64Array(nodeCount),
    through: new Float64Array(nodeCount),
    slopeSum: new Float64Array(nodeCount),
    rounding: new Float64Array(zoneCount),
    target: new Float64Array(zoneCount),
    matrix: createSkyline(first),
  };
}

/** Half-length of the chord that stands for each law in the first, linear solve [Pa]. */
const chordPa = 4;

function describedNumbers(
  { zones, boundaries, links, outdoorAir }: NetworkDescription,
  place: Int32Array,
  { from, to }: { readonly from: Int32Array; readonly to: Int32Array },
): DescribedNumbers {
  const nodes = [...zones, ...boundaries];
  const byPlace = (read: (node: (typeof nodes)[number]) => number): Float64Array => {
    const values = new Float64Array(nodes.length);
    nodes.forEach((node, index) => (values[place[index]!] = read(node)));
    return values;
  };
  const heightM = byPlace((node) => node.heightM);
  const airOf = new Map(nodes.map((node) => [node.id, node.air]));
  const chords = links.map((link) => {
    const air = { from: airOf.get(link.from)!, to: airOf.get(link.to)! };
    const flow = (x: number): number => flowAt(link.law, x, air).massFlowKgPerS;
    return [flow(chordPa), flow(-chordPa)] as const;
  });
  return {
    temperatureC: byPlace((node) => node.air.temperatureC),
    densityKgPerM3: byPlace((node) => node.air.densityKgPerM3),
    boundaryPressurePa: Float64Array.from(boundaries, ({ pressurePa }) => pressurePa),
    outdoorDensityKgPerM3: outdoorAir.densityKgPerM3,
    fromRiseM: Float64Array.from(links, (link, k) => link.fromHeightM - heightM[from[k]!]!),
    toRiseM: Float64Array.from(links, (link, k) => link.toHeightM - heightM[to[k]!]!),
    columnRiseM: Float64Array.from(links, (link) => link.toHeightM - link.fromHeightM),
    columnDensityKgPerM3: Float64Array.from(
      links,
      (link) => link.columnAir?.densityKgPerM3 ?? outdoorAir.densityKgPerM3,
    ),
    chordSlope: Float64Array.from(chords, ([above, below]) => (above - below) / (2 * chordPa)),
    chordFlow: Float64Array.from(chords, ([above, below]) => (above + below) / 2),
  };
}

/** Fewer links than this of one class join the group of class 0. */
const smallestGroup = 6;

/** Links that share a block, a record length and a class, each group with room for all its links. */
function groupsOf(
  links: readonly LinkDescription[],
  laws: readonly FlowLaw<FlowLawDescription>[],
): KernelGroup[] {
  const blocks = new Map<unknown, Map<string, number[]>>();
  links.forEach((link, index) => {
    const law = laws[index]!;
    const byShape = blocks.get(law.block) ?? new Map<string, number[]>();
    blocks.set(law.block, byShape);
    const shape = `${law.recordLength(link.law)} ${law.recordClass(link.law)}`;
    const members = byShape.get(shape) ?? [];
    byShape.set(shape, members);
    members.push(index);
  });
  return [...blocks.values()].flatMap((byShape) => {
    for (const [shape, members] of byShape) {
      const general = `${shape.split(' ')[0]!} 0`;
      if (members.length >= smallestGroup || shape === general) continue;
      byShape.delete(shape);
      const all = byShape.get(general) ?? [];
      byShape.set(general, all);
      all.push(...members);
    }
    return [...byShape].map(([shape, members]) => {
      const [recordLength, recordClass] = shape.split(' ').map(Number) as [number, number];
      return {
        law: laws[members[0]!]!,
        members: Int32Array.from(members),
        recordLength,
        recordClass,
        records: new Float64Array(recordLength * members.length),
        begin: 0,
        end: 0,
      };
    });
  });
}

function neighboursOf(zoneCount: number, ends: readonly [number, number][]): number[][] {
  const neighbours = Array.from({ length: zoneCount }, () => new Set<number>());
  for (const [from, to] of ends) {
    if (from < zoneCount && to < zoneCount) {
      neighbours[from]!.add(to);
      neighbours[to]!.add(from);
    }
  }
  return neighbours.map((set) => [...set]);
}
