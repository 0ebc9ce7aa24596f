import { flowLawOf, inletAir } from '@evendraft/airflow';
import type { NetworkDescription } from '../network-description.js';
import { createArena } from './arena.js';
import { createLaggards } from './balance-laggards.js';
import { describeChords } from './chords.js';
import type { DescriptionIndex } from './index-description.js';
import type { DescribedNumbers, Kernel } from './kernel.js';
import { groupLinks } from './link-groups.js';
import { setScenario } from './set-scenario.js';
import { zoneLayout } from './zone-layout.js';
import { createZoneMatrix, emptyLike } from './zone-matrix.js';

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
  const reference = { temperatureC: 20, densityKgPerM3: 1.2041 };
  const air = inletAir(reference);
  const twoWay = new Uint8Array(linkCount);
  for (let link = 0; link < linkCount; link++) {
    const { leastKgPerS, mostKgPerS, strict } = laws[link]!.reach(descriptions[link]!, air, air);
    if (strict && leastKgPerS === -Infinity && mostKgPerS === Infinity) twoWay[link] = 1;
  }
  const arena = createArena(28 * linkCount + 40 * nodeCount + 256);
  // What every sweep and step touches comes first, side by side.
  const tally = {
    pressurePa: arena.floats(zoneCount + 1),
    residual: arena.floats(zoneCount + 1),
    through: arena.floats(zoneCount + 1),
    slopeSum: arena.floats(zoneCount + 1),
    from: arena.ints(linkCount),
    to: arena.ints(linkCount),
    drivePa: arena.floats(linkCount),
    state: {
      massFlowKgPerS: arena.floats(linkCount),
      slopeKgPerSPa: arena.floats(linkCount),
      pressureDifferencePa: arena.floats(linkCount),
    },
    chordSlope: arena.floats(linkCount),
    chordFlow: arena.floats(linkCount),
  };
  const groups = groupLinks({ laws, descriptions, from, to, zoneCount }, arena);
  const matrix = createZoneMatrix(layout, arena);
  const step = arena.floats(zoneCount + 1);
  const bend = arena.floats(zoneCount + 1);
  const pressure = arena.floats(nodeCount);
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
    groups,

    described: describedNumbers(description, place, { from, to }),
    nodeTemperatureC: arena.floats(nodeCount).fill(NaN),
    nodeDensityKgPerM3: arena.floats(nodeCount).fill(NaN),
    nodeLogDensityRatio: arena.floats(nodeCount),
    nodeLogViscosityRatio: arena.floats(nodeCount),
    scale: arena.floats(linkCount).fill(NaN),
    drivePa: arena.floats(linkCount),
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
    activeLink: arena.ints(linkCount),
    activePlace: arena.ints(linkCount).fill(-1),
    activeFrom: arena.ints(linkCount),
    activeTo: arena.ints(linkCount),
    activeSign: arena.floats(linkCount),
    tally,
    constantResidual: arena.floats(zoneCount + 1),
    constantThrough: arena.floats(zoneCount + 1),
    interiorCount: 0,
    interiorLink: arena.ints(interior),
    interiorSlot: arena.ints(interior),
    chords: { state: 'unknown', matrix: emptyLike(matrix, arena) },

    iteration: {
      converged: false,
      iterations: 0,
      lawSweeps: 0,
      excess: 0,
      leastExcess: 0,
      credit: 0,
    },
    laggards: createLaggards({ zoneCount, linkCount, groups }, arena),

    pressure,
    trial: tally.pressurePa,
    step,
    bend,
    residual: tally.residual,
    through: tally.through,
    slopeSum: tally.slopeSum,
    rounding: arena.floats(zoneCount),
    target: arena.floats(zoneCount),
    matrix,
  };
  setScenario(kernel, { count: 1 }, 0);
  describeChords(kernel);
  return kernel;
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
