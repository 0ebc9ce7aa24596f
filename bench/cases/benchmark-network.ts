import type { FixedFlowDescription, PowerLawDescription } from '@evendraft/airflow';
import type { NetworkDescription } from '@evendraft/network';
import type { RandomNumbers } from '../../packages/checks/src/networks/random-numbers.js';
import { randomNumbers } from '../../packages/checks/src/networks/random-numbers.js';

/** How large and how regular. */
export interface BenchmarkSize {
  readonly zones: number;
  readonly links: number;
  /** Exponents drawn at random from 0.5 to 1, or 0.5 and 0.65 only. */
  readonly exponents?: 'any' | 'usual';
}

const air = { temperatureC: 20, densityKgPerM3: 1.2041 };

type Law = PowerLawDescription | FixedFlowDescription;
type Row = readonly [from: string, to: string, law: Law];

/**
 * A network for timing: power laws and one exhaust of a fixed flow. Up to 100 zones it is a random graph;
 * beyond, it is shaped like buildings: floors of 5 × 7 rooms with doors to their neighbours, leaks to the floor
 * above, twenty floors a building.
 *
 * @param seed - its number
 * @param size - zones, links and exponents
 * @returns a description with that many links, if they are at least four a zone
 */
export function benchmarkNetwork(seed: number, size: BenchmarkSize): NetworkDescription {
  const { zones, links, exponents = 'any' } = size;
  const random = randomNumbers(seed);
  const zoneIds = Array.from({ length: zones }, (_, index) => `z${index}`);
  const faces = ['o0', 'o1', 'o2', 'o3'];
  const exponent = (): number =>
    exponents === 'usual' ? (random.chance(0.5) ? 0.5 : 0.65) : random.between(0.5, 1);
  const leak = (least: number, most: number): Law => ({
    kind: 'powerLaw',
    coefficientM3PerSPaN: random.decades(least, most),
    exponent: exponent(),
  });
  const anyFace = (): string => faces[random.below(4)]!;

  const rows: Row[] = [
    [zoneIds[0]!, 'o0', { kind: 'fixedFlow', massFlowKgPerS: random.between(0.02, 0.2) }],
  ];
  zoneIds.forEach((zone) => rows.push([zone, anyFace(), leak(1e-3, 3e-2)]));
  for (const [a, b] of zones > 100 ? buildingDoors(zones) : treeDoors(zones, random)) {
    rows.push([zoneIds[a]!, zoneIds[b]!, leak(1e-2, 0.3)]);
  }
  while (rows.length < links) {
    const zone = zoneIds[random.below(zones)]!;
    const inside = zones <= 100 && random.chance(0.35);
    const other = inside ? zoneIds[random.below(zones)]! : anyFace();
    if (zone !== other) rows.push([zone, other, leak(1e-3, 3e-2)]);
  }
  return {
    outdoorAir: air,
    zones: zoneIds.map((id) => ({ id, origin: id, heightM: 0, air })),
    boundaries: faces.map((id) => ({
      id,
      origin: id,
      heightM: 0,
      pressurePa: random.between(-10, 10),
      air,
    })),
    links: rows.map(([from, to, law], index) => ({
      id: `e${index}`,
      origin: `e${index}`,
      from,
      to,
      fromHeightM: 0,
      toHeightM: 0,
      law,
    })),
  };
}

function treeDoors(zones: number, random: RandomNumbers): [number, number][] {
  return Array.from({ length: zones - 1 }, (_, k) => [random.below(k + 1), k + 1]);
}

function buildingDoors(zones: number): [number, number][] {
  const [across, perFloor, perBuilding] = [5, 35, 700];
  const doors: [number, number][] = [];
  for (let zone = 0; zone < zones; zone++) {
    const beside = zone + 1;
    if (beside % across !== 0 && beside < zones) doors.push([zone, beside]);
    const behind = zone + across;
    if (zone % perFloor < perFloor - across && behind < zones) doors.push([zone, behind]);
    const above = zone + perFloor;
    if (zone % perBuilding < perBuilding - perFloor && above < zones) doors.push([zone, above]);
  }
  return doors;
}
