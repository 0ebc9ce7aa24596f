import { flowLawOf, inletAir } from '@evendraft/airflow';
import type { NetworkDescription } from '../network-description.js';
import type { Arena } from './arena.js';
import { inOneMemory } from './arena.js';
import { createLaggards } from './balance-laggards.js';
import { describeChords } from './chords.js';
import type { DescriptionIndex } from './index-description.js';
import type { DescribedNumbers, Kernel } from './kernel.js';
import type { LinkGroup } from './link-groups.js';
import { groupLinks } from './link-groups.js';
import { networkRecordLength, writeNetworkRecord } from './network-record.js';
import { setScenario } from './set-scenario.js';
import type { ZoneLayout } from './zone-layout.js';
import { zoneLayout } from './zone-layout.js';
import { bytesOfMatrices, createZoneMatrix, emptyLike } from './zone-matrix.js';

/** Lays a checked description out in arrays, with the scenario as described in force. */
export function createKernel(description: NetworkDescription, index: DescriptionIndex): Kernel {
  const { zones, boundaries, links } = description;
  const zoneCount = zones.length;
  const nodeCount = zoneCount + boundaries.length;
  const linkCount = links.length;
  const layout = zoneLayout(zoneCount, index.from, index.to);
  const place = new Int32Array(nodeCount);
  place.set(layout.place);
  for (let node = zoneCount; node < nodeCount; node++) place[node] = node;
  const from = new Int32Array(linkCount);
  const to = new Int32Array(linkCount);
  let interior = 0;
  for (let link = 0; link < linkCount; link++) {
    const start = (from[link] = place[index.from[link]!]!);
    const end = (to[link] = place[index.to[link]!]!);
    if (start < zoneCount && end < zoneCount) interior++;
  }

  const descriptions = links.map((link) => link.law);
  const laws = descriptions.map(flowLawOf);
  const air = inletAir(reference);
  const twoWay = new Uint8Array(linkCount);
  for (let link = 0; link < linkCount; link++) {
    const { leastKgPerS, mostKgPerS, strict } = laws[link]!.reach(descriptions[link]!, air, air);
    if (strict && leastKgPerS === -Infinity && mostKgPerS === Infinity) twoWay[link] = 1;
  }
  const groups = groupLinks({ laws, descriptions, from, to, zoneCount });
  const records = groups.reduce(
    (sum, { recordLength, members }) => sum + recordLength * members.length,
    0,
  );
  const arrays = inOneMemory(
    8 * (records + 16 * linkCount + 20 * nodeCount + 256) + bytesOfMatrices(layout),
    (arena) => arraysOf({ layout, groups, zoneCount, nodeCount, linkCount, interior }, arena),
  );
  const kernel: Kernel = {
    zoneCount,
    boundaryCount: boundaries.length,
    linkCount,
    placeOfZone: place.slice(0, zoneCount),
    from,
    to,
    laws,
    descriptions,
    twoWay,

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
    interiorCount: 0,

    iteration: {
      converged: false,
      iterations: 0,
      lawSweeps: 0,
      // No number yet, and no integer: an object whose fields change their kind is slower to read.
      excess: NaN,
      leastExcess: NaN,
      credit: 0,
    },
    rounding: new Float64Array(zoneCount),
    target: new Float64Array(zoneCount),
    // Field by field: an object that is spread out of another is slower to read.
    groups: arrays.groups,
    laggards: arrays.laggards,
    links: arrays.links,
    pressure: arrays.pressure,
    trial: arrays.trial,
    step: arrays.step,
    bend: arrays.bend,
    residual: arrays.residual,
    through: arrays.through,
    slopeSum: arrays.slopeSum,
    interiorLink: arrays.interiorLink,
    interiorEntry: arrays.interiorEntry,
    matrix: arrays.matrix,
    chords: arrays.chords,
    loops: arrays.loops,
    record: arrays.record,
    address: arrays.record.byteOffset,
    stepAddress: arrays.step.byteOffset,
    bendAddress: arrays.bend.byteOffset,
  };
  setScenario(kernel, { count: 1 }, 0);
  describeChords(kernel);
  return kernel;
}

const reference = { temperatureC: 20, densityKgPerM3: 1.2041 };

/** How large a network is, and its pattern. */
interface Extent {
  readonly layout: ZoneLayout;
  readonly groups: readonly LinkGroup[];
  readonly zoneCount: number;
  readonly nodeCount: number;
  readonly linkCount: number;
  /** Links between two zones. */
  readonly interior: number;
}

/** The arrays on which the compiled loops work. */
function arraysOf(
  { layout, groups: linkGroups, zoneCount, nodeCount, linkCount, interior }: Extent,
  arena: Arena,
) {
  const record = arena.ints(networkRecordLength);
  const byZone = (): Float64Array => arena.floats(zoneCount + 1);
  const byLink = (): Float64Array => arena.floats(linkCount);
  const groups = linkGroups.map(({ law, recordLength, members, described }) => {
    const records = arena.floats(recordLength * members.length);
    return {
      law,
      recordLength,
      members,
      described,
      records,
      begin: 0,
      end: 0,
      constant: law.constant === true,
      compiled: law.compiled !== undefined,
      inverts: law.inverseBlock !== undefined,
      address: records.byteOffset,
    };
  });
  const matrix = createZoneMatrix(layout, arena);
  const arrays = {
    links: {
      from: arena.ints(linkCount),
      to: arena.ints(linkCount),
      drivePa: byLink(),
      state: {
        pressureDifferencePa: byLink(),
        massFlowKgPerS: byLink(),
        slopeKgPerSPa: byLink(),
      },
      otherKgPerS: byLink(),
      chordSlope: byLink(),
      chordFlow: byLink(),
      zoneEnd: arena.ints(zoneCount),
      zoneLink: arena.ints(2 * linkCount),
    },
    pressure: arena.floats(nodeCount),
    ...{ trial: byZone(), step: byZone(), bend: byZone() },
    ...{ residual: byZone(), through: byZone(), slopeSum: byZone() },
    interiorLink: arena.ints(interior),
    interiorEntry: arena.ints(interior),
    matrix,
    chords: { state: 'unknown' as const, matrix: emptyLike(matrix, arena) },
  };
  writeNetworkRecord(record, zoneCount, arrays);
  return {
    ...arrays,
    groups,
    laggards: createLaggards(zoneCount, groups),
    ...{ loops: arena.loops, record },
  };
}

function describedNumbers(
  { zones, boundaries, links, outdoorAir }: NetworkDescription,
  place: Int32Array,
  { from, to }: { readonly from: Int32Array; readonly to: Int32Array },
): DescribedNumbers {
  const nodeCount = zones.length + boundaries.length;
  const heightM = new Float64Array(nodeCount);
  const temperatureC = new Float64Array(nodeCount);
  const densityKgPerM3 = new Float64Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) {
    const { heightM: height, air } = zones[node] ?? boundaries[node - zones.length]!;
    const at = place[node]!;
    heightM[at] = height;
    temperatureC[at] = air.temperatureC;
    densityKgPerM3[at] = air.densityKgPerM3;
  }
  const fromRiseM = new Float64Array(links.length);
  const toRiseM = new Float64Array(links.length);
  const columnRiseM = new Float64Array(links.length);
  const columnDensityKgPerM3 = new Float64Array(links.length);
  for (let link = 0; link < links.length; link++) {
    const { fromHeightM, toHeightM, columnAir } = links[link]!;
    fromRiseM[link] = fromHeightM - heightM[from[link]!]!;
    toRiseM[link] = toHeightM - heightM[to[link]!]!;
    columnRiseM[link] = toHeightM - fromHeightM;
    columnDensityKgPerM3[link] = (columnAir ?? outdoorAir).densityKgPerM3;
  }
  return {
    temperatureC,
    densityKgPerM3,
    boundaryPressurePa: Float64Array.from(boundaries, ({ pressurePa }) => pressurePa),
    outdoorDensityKgPerM3: outdoorAir.densityKgPerM3,
    fromRiseM,
    toRiseM,
    columnRiseM,
    columnDensityKgPerM3,
    chordSlope: new Float64Array(links.length),
    chordFlow: new Float64Array(links.length),
  };
}
