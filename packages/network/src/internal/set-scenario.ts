import { gravity, inletAir } from '@evendraft/airflow';
import type { NetworkDescription } from '../network-description.js';
import type { NodeAir, Scenario } from '../scenario.js';
import type { Kernel } from './kernel.js';

/**
 * Brings a scenario into force. Only what differs from the scenario before is prepared again, so that a
 * change of boundary pressures costs a copy, and nothing is allocated.
 */
export function setScenario(
  kernel: Kernel,
  description: NetworkDescription,
  scenario: Scenario,
): void {
  const airChanged = setAir(kernel, description, scenario);
  const { linkScale } = scenario;
  let switched = false;
  let scaled = false;
  for (let link = 0; link < kernel.linkCount; link++) {
    const scale = linkScale === undefined ? 1 : linkScale[link]!;
    const before = kernel.scale[link]!;
    if (scale === before) continue;
    // The first scenario finds NaN here, which counts as a switch.
    if (!(before > 0 === scale > 0) || !(before >= 0)) switched = true;
    scaled = true;
    kernel.scale[link] = scale;
  }
  if (switched) packLinks(kernel);
  if (switched || scaled || airChanged) prepareRecords(kernel);
  setDrives(kernel, description, scenario);
  const { boundaryPressuresPa } = scenario;
  for (let boundary = 0; boundary < kernel.boundaryCount; boundary++) {
    kernel.pressure[kernel.zoneCount + boundary] =
      boundaryPressuresPa === undefined
        ? description.boundaries[boundary]!.pressurePa
        : boundaryPressuresPa[boundary]!;
  }
}

function setAir(kernel: Kernel, description: NetworkDescription, scenario: Scenario): boolean {
  let changed = false;
  for (let zone = 0; zone < kernel.zoneCount; zone++) {
    const place = kernel.placeOfZone[zone]!;
    const { air } = description.zones[zone]!;
    if (setNodeAir(kernel, place, airOf(scenario.zoneAir, zone, air))) changed = true;
  }
  for (let boundary = 0; boundary < kernel.boundaryCount; boundary++) {
    const { air } = description.boundaries[boundary]!;
    const place = kernel.zoneCount + boundary;
    if (setNodeAir(kernel, place, airOf(scenario.boundaryAir, boundary, air))) changed = true;
  }
  return changed;
}

const scratchAir = { temperatureC: 0, densityKgPerM3: 0 };
const scratchInlet = inletAir({ temperatureC: 20, densityKgPerM3: 1 });

function airOf(
  air: NodeAir | undefined,
  index: number,
  described: typeof scratchAir | NetworkDescription['outdoorAir'],
) {
  if (air === undefined) return described;
  scratchAir.temperatureC = air.temperatureC[index]!;
  scratchAir.densityKgPerM3 = air.densityKgPerM3[index]!;
  return scratchAir;
}

function setNodeAir(kernel: Kernel, place: number, air: NetworkDescription['outdoorAir']): boolean {
  if (
    air.temperatureC === kernel.nodeTemperatureC[place] &&
    air.densityKgPerM3 === kernel.nodeDensityKgPerM3[place]
  ) {
    return false;
  }
  kernel.nodeTemperatureC[place] = air.temperatureC;
  kernel.nodeDensityKgPerM3[place] = air.densityKgPerM3;
  inletAir(air, scratchInlet);
  kernel.nodeLogDensityRatio[place] = scratchInlet.logDensityRatio;
  kernel.nodeLogViscosityRatio[place] = scratchInlet.logViscosityRatio;
  return true;
}

/** Packs the links that are on, group by group, and lists them by zone. */
function packLinks(kernel: Kernel): void {
  const { zoneCount, from, to, scale } = kernel;
  let active = 0;
  for (const group of kernel.groups) {
    group.begin = active;
    for (const link of group.members) {
      if (scale[link] === 0) {
        kernel.activePlace[link] = -1;
        continue;
      }
      kernel.activePlace[link] = active;
      kernel.activeLink[active] = link;
      kernel.activeFrom[active] = from[link]!;
      kernel.activeTo[active] = to[link]!;
      active++;
    }
    group.end = active;
  }
  kernel.activeCount = active;

  // Counting sort by end: rows 2z are the links that leave zone z, rows 2z + 1 those that enter it.
  const { incidentStart, incident, activeFrom, activeTo } = kernel;
  incidentStart.fill(0);
  for (let link = 0; link < active; link++) {
    if (activeFrom[link]! < zoneCount) incidentStart[2 * activeFrom[link]! + 1]!++;
    if (activeTo[link]! < zoneCount) incidentStart[2 * activeTo[link]! + 2]!++;
  }
  for (let row = 0; row < 2 * zoneCount; row++) incidentStart[row + 1]! += incidentStart[row]!;
  for (let link = active - 1; link >= 0; link--) {
    if (activeFrom[link]! < zoneCount) {
      incident[--incidentStart[2 * activeFrom[link]! + 1]!] = link;
    }
    if (activeTo[link]! < zoneCount) incident[--incidentStart[2 * activeTo[link]! + 2]!] = link;
  }
  // Each start now lies one row late: shift back.
  for (let row = 0; row < 2 * zoneCount; row++) incidentStart[row] = incidentStart[row + 1]!;
  incidentStart[2 * zoneCount] = countIncident(kernel);

  let interior = 0;
  for (let link = 0; link < active; link++) {
    const low = Math.min(activeFrom[link]!, activeTo[link]!);
    const high = Math.max(activeFrom[link]!, activeTo[link]!);
    if (high >= zoneCount) continue;
    kernel.interiorLink[interior] = link;
    kernel.interiorSlot[interior] = kernel.matrix.rowOffset[high]! + low;
    interior++;
  }
  kernel.interiorCount = interior;
}

function countIncident({ activeCount, activeFrom, activeTo, zoneCount }: Kernel): number {
  let count = 0;
  for (let link = 0; link < activeCount; link++) {
    if (activeFrom[link]! < zoneCount) count++;
    if (activeTo[link]! < zoneCount) count++;
  }
  return count;
}

function prepareRecords(kernel: Kernel): void {
  const { preparation } = kernel;
  for (const group of kernel.groups) {
    preparation.records = group.records;
    for (let place = group.begin; place < group.end; place++) {
      const link = kernel.activeLink[place]!;
      loadInlet(kernel, kernel.from[link]!, preparation.from);
      loadInlet(kernel, kernel.to[link]!, preparation.to);
      preparation.scale = kernel.scale[link]!;
      preparation.at = (place - group.begin) * group.recordLength;
      kernel.laws[link]!.prepare(kernel.descriptions[link]!, preparation);
    }
  }
  kernel.chordsKnown = false;
}

function loadInlet(kernel: Kernel, node: number, into: Kernel['preparation']['from']): void {
  into.densityKgPerM3 = kernel.nodeDensityKgPerM3[node]!;
  into.logDensityRatio = kernel.nodeLogDensityRatio[node]!;
  into.logViscosityRatio = kernel.nodeLogViscosityRatio[node]!;
}

/**
 * What each link sees beyond p(from) − p(to): the air columns of both nodes between the height where their
 * pressure is quoted and the opening, the air in the link itself, and the scenario's offset.
 */
function setDrives(kernel: Kernel, description: NetworkDescription, scenario: Scenario): void {
  const outdoor = (scenario.outdoorAir ?? description.outdoorAir).densityKgPerM3;
  const { columnDensityKgPerM3, linkOffsetPa } = scenario;
  for (let link = 0; link < kernel.linkCount; link++) {
    const { fromHeightM, toHeightM, columnAir } = description.links[link]!;
    let drive = linkOffsetPa === undefined ? 0 : linkOffsetPa[link]!;
    const from = kernel.from[link]!;
    const to = kernel.to[link]!;
    drive +=
      gravity *
      ((outdoor - kernel.nodeDensityKgPerM3[from]!) * (fromHeightM - kernel.nodeHeightM[from]!) -
        (outdoor - kernel.nodeDensityKgPerM3[to]!) * (toHeightM - kernel.nodeHeightM[to]!));
    if (fromHeightM !== toHeightM) {
      const column =
        columnDensityKgPerM3 === undefined
          ? columnAir!.densityKgPerM3
          : columnDensityKgPerM3[link]!;
      drive += gravity * (outdoor - column) * (toHeightM - fromHeightM);
    }
    kernel.drivePa[link] = drive;
    const active = kernel.activePlace[link]!;
    if (active >= 0) kernel.activeDrivePa[active] = drive;
  }
}
