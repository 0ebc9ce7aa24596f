import { gravity, inletAir } from '@evendraft/airflow';
import type { NodeAir, ScenarioBatch } from '../scenario.js';
import type { Kernel, KernelGroup } from './kernel.js';
import { writeLinkCounts } from './network-record.js';
import { entryOf } from './zone-matrix.js';

/**
 * Brings one row of a batch into force. Only what differs from the row before is prepared again, so that a
 * change of boundary pressures costs a copy, and nothing is allocated.
 */
export function setScenario(kernel: Kernel, batch: ScenarioBatch, row: number): void {
  const { inForce } = kernel;
  let airChanged = false;
  if (inForce.zoneAir || batch.zoneAir !== undefined) airChanged = setZoneAir(kernel, batch, row);
  if (inForce.boundaryAir || batch.boundaryAir !== undefined) {
    airChanged = setBoundaryAir(kernel, batch, row) || airChanged;
  }
  const scaled = (inForce.scale || batch.linkScale !== undefined) && setScale(kernel, batch, row);
  if (scaled || airChanged) prepareRecords(kernel);
  if (scaled) kernel.chords.state = 'unknown';

  const drives =
    batch.outdoorAir !== undefined ||
    batch.columnDensityKgPerM3 !== undefined ||
    batch.linkOffsetPa !== undefined;
  const moved = airChanged || drives || inForce.drives;
  if (moved) setDrives(kernel, batch, row);
  const pressures = batch.boundaryPressuresPa !== undefined;
  if (pressures || inForce.pressures) setBoundaryPressures(kernel, batch, row);
  if (moved || scaled || pressures || inForce.pressures) placeDrives(kernel);

  inForce.zoneAir = batch.zoneAir !== undefined;
  inForce.boundaryAir = batch.boundaryAir !== undefined;
  inForce.scale = batch.linkScale !== undefined;
  inForce.drives = drives;
  inForce.pressures = pressures;
}

function setZoneAir(kernel: Kernel, { zoneAir }: ScenarioBatch, row: number): boolean {
  const { zoneCount, placeOfZone } = kernel;
  let changed = false;
  for (let zone = 0; zone < zoneCount; zone++) {
    const at = row * zoneCount + zone;
    if (setNodeAir(kernel, placeOfZone[zone]!, zoneAir, at)) changed = true;
  }
  return changed;
}

function setBoundaryAir(kernel: Kernel, { boundaryAir }: ScenarioBatch, row: number): boolean {
  const { zoneCount, boundaryCount } = kernel;
  let changed = false;
  for (let boundary = 0; boundary < boundaryCount; boundary++) {
    const at = row * boundaryCount + boundary;
    if (setNodeAir(kernel, zoneCount + boundary, boundaryAir, at)) changed = true;
  }
  return changed;
}

/** Takes over the factors on the links' flows; packs the links anew where one was switched. */
function setScale(kernel: Kernel, { linkScale }: ScenarioBatch, row: number): boolean {
  const { linkCount, scale } = kernel;
  let switched = false;
  let changed = false;
  for (let link = 0; link < linkCount; link++) {
    const now = linkScale === undefined ? 1 : linkScale[row * linkCount + link]!;
    const before = scale[link]!;
    if (now === before) continue;
    // The first row finds NaN here, which counts as a switch.
    if (!(before >= 0) || before > 0 !== now > 0) switched = true;
    changed = true;
    scale[link] = now;
  }
  if (switched) packLinks(kernel);
  return changed;
}

function setBoundaryPressures(
  kernel: Kernel,
  { boundaryPressuresPa }: ScenarioBatch,
  row: number,
): void {
  const { zoneCount, boundaryCount, described, pressure } = kernel;
  for (let boundary = 0; boundary < boundaryCount; boundary++) {
    pressure[zoneCount + boundary] =
      boundaryPressuresPa === undefined
        ? described.boundaryPressurePa[boundary]!
        : boundaryPressuresPa[row * boundaryCount + boundary]!;
  }
}

const scratchAir = { temperatureC: 0, densityKgPerM3: 0 };
const scratchInlet = inletAir({ temperatureC: 20, densityKgPerM3: 1 });

/** Takes over the air of a node, from `at` in the batch's array or as described; true where it changed. */
// eslint-disable-next-line max-params -- once a node and row
function setNodeAir(kernel: Kernel, node: number, air: NodeAir | undefined, at: number): boolean {
  const { described, nodeTemperatureC, nodeDensityKgPerM3 } = kernel;
  const temperature = air === undefined ? described.temperatureC[node]! : air.temperatureC[at]!;
  const density = air === undefined ? described.densityKgPerM3[node]! : air.densityKgPerM3[at]!;
  if (temperature === nodeTemperatureC[node] && density === nodeDensityKgPerM3[node]) return false;
  nodeTemperatureC[node] = temperature;
  nodeDensityKgPerM3[node] = density;
  scratchAir.temperatureC = temperature;
  scratchAir.densityKgPerM3 = density;
  inletAir(scratchAir, scratchInlet);
  kernel.nodeLogDensityRatio[node] = scratchInlet.logDensityRatio;
  kernel.nodeLogViscosityRatio[node] = scratchInlet.logViscosityRatio;
  return true;
}

/** Packs the links that are on, group by group, and lists them by zone. */
function packLinks(kernel: Kernel): void {
  const { scale, activePlace } = kernel;
  kernel.activeCount = 0;
  kernel.interiorCount = 0;
  for (const group of kernel.groups) {
    const { members } = group;
    group.begin = kernel.activeCount;
    for (let member = 0; member < members.length; member++) {
      const link = members[member]!;
      if (scale[link] === 0) activePlace[link] = -1;
      else packLink(kernel, link);
    }
    group.end = kernel.activeCount;
  }
  listByZone(kernel);
  writeLinkCounts(kernel);
  kernel.verdict = undefined;
}

/** Appends a link to those that are on. */
function packLink(kernel: Kernel, link: number): void {
  const { zoneCount, links, activeFrom, activeTo, activeCount: active } = kernel;
  const from = kernel.from[link]!;
  const to = kernel.to[link]!;
  kernel.activeCount++;
  kernel.activePlace[link] = active;
  kernel.activeLink[active] = link;
  activeFrom[active] = from;
  activeTo[active] = to;
  links.from[active] = Math.min(from, zoneCount);
  links.to[active] = Math.min(to, zoneCount);
  if (from >= zoneCount || to >= zoneCount) return;
  kernel.interiorLink[kernel.interiorCount] = active;
  kernel.interiorEntry[kernel.interiorCount] = entryOf(kernel.matrix, from, to);
  kernel.interiorCount++;
}

/** Lists the links that are on by zone, each list in their order: a counting sort. */
function listByZone({ zoneCount, activeCount, links }: Kernel): void {
  const { from, to, zoneEnd, zoneLink } = links;
  zoneEnd.fill(0);
  // Counted one place late, so that filling the lists leaves their ends.
  for (let link = 0; link < activeCount; link++) {
    if (from[link]! + 1 < zoneCount) zoneEnd[from[link]! + 1]!++;
    if (to[link]! + 1 < zoneCount) zoneEnd[to[link]! + 1]!++;
  }
  for (let zone = 1; zone < zoneCount; zone++) zoneEnd[zone]! += zoneEnd[zone - 1]!;
  for (let link = 0; link < activeCount; link++) {
    if (from[link]! < zoneCount) zoneLink[zoneEnd[from[link]!]!++] = 2 * link;
    if (to[link]! < zoneCount) zoneLink[zoneEnd[to[link]!]!++] = 2 * link + 1;
  }
}

/** Writes the records of all active laws, and their chords. */
function prepareRecords(kernel: Kernel): void {
  const { preparation, links, described, scale, from, to, laws, descriptions } = kernel;
  const { activePlace } = kernel;
  for (const group of kernel.groups) {
    preparation.records = group.records;
    // Thousands of descriptions are read twice as fast in their own order.
    for (let k = 0; k < group.described.length; k++) {
      const link = group.described[k]!;
      const place = activePlace[link]!;
      if (place < 0) continue;
      loadInlet(kernel, from[link]!, preparation.from);
      loadInlet(kernel, to[link]!, preparation.to);
      preparation.scale = scale[link]!;
      preparation.at = (place - group.begin) * group.recordLength;
      laws[link]!.prepare(descriptions[link]!, preparation);
      links.chordSlope[place] = scale[link]! * described.chordSlope[link]!;
      links.chordFlow[place] = scale[link]! * described.chordFlow[link]!;
    }
    if (group.constant) keepFlows(kernel, group);
  }
}

/** Flows that no pressure changes, evaluated once: they are their own chords. */
function keepFlows({ links }: Kernel, group: KernelGroup): void {
  group.law.block(group, links.state);
  for (let place = group.begin; place < group.end; place++) {
    links.chordSlope[place] = 0;
    links.chordFlow[place] = links.state.massFlowKgPerS[place]!;
  }
}

function loadInlet(kernel: Kernel, node: number, into: Kernel['preparation']['from']): void {
  into.densityKgPerM3 = kernel.nodeDensityKgPerM3[node]!;
  into.logDensityRatio = kernel.nodeLogDensityRatio[node]!;
  into.logViscosityRatio = kernel.nodeLogViscosityRatio[node]!;
}

/**
 * What each link sees beyond p(from) − p(to): the air columns of both nodes between the height where their
 * pressure is quoted and the opening, the air in the link itself, and the row's offset.
 */
function setDrives(kernel: Kernel, batch: ScenarioBatch, row: number): void {
  const { linkCount, from, to, described, nodeDensityKgPerM3, drivePa } = kernel;
  const { fromRiseM, toRiseM, columnRiseM } = described;
  const { columnDensityKgPerM3, linkOffsetPa } = batch;
  const outdoor = batch.outdoorAir?.densityKgPerM3[row] ?? described.outdoorDensityKgPerM3;
  for (let link = 0; link < linkCount; link++) {
    const at = row * linkCount + link;
    const column =
      columnDensityKgPerM3 === undefined
        ? described.columnDensityKgPerM3[link]!
        : columnDensityKgPerM3[at]!;
    const drive =
      (linkOffsetPa === undefined ? 0 : linkOffsetPa[at]!) +
      gravity *
        ((outdoor - nodeDensityKgPerM3[from[link]!]!) * fromRiseM[link]! -
          (outdoor - nodeDensityKgPerM3[to[link]!]!) * toRiseM[link]! +
          (outdoor - column) * columnRiseM[link]!);
    drivePa[link] = drive;
  }
}

/** What each active link sees with no pressure in the zones: its drive and the pressures of its boundaries. */
function placeDrives(kernel: Kernel): void {
  const { zoneCount, activeCount, activeLink, activeFrom, activeTo } = kernel;
  const { drivePa, pressure } = kernel;
  const placed = kernel.links.drivePa;
  for (let link = 0; link < activeCount; link++) {
    const from = activeFrom[link]!;
    const to = activeTo[link]!;
    let drive = drivePa[activeLink[link]!]!;
    if (from >= zoneCount) drive += pressure[from]!;
    if (to >= zoneCount) drive -= pressure[to]!;
    placed[link] = drive;
  }
}
