import type { FlowLawDescription } from '@evendraft/airflow';
import { referenceAir } from '@evendraft/airflow';
import type { LinkDescription, NetworkDescription, Scenario } from '@evendraft/network';
import type { RandomNumbers } from './random-numbers.js';
import { randomNumbers } from './random-numbers.js';

/** A network that is meant to be hard, and the offsets of its links. */
export interface HardNetwork {
  readonly description: NetworkDescription;
  readonly scenario: Scenario;
}

const air = { temperatureC: 20, densityKgPerM3: referenceAir.densityKgPerM3 };

/** A range of numbers of zones. */
export interface ZoneRange {
  readonly least: number;
  readonly most: number;
}

/**
 * One network of a family that breaks general root finders: 1 to 30 zones unless asked otherwise, coefficients over six decades
 * with cracks beside open halls, exponents from 0.5 (three of ten exactly), offsets of 20 Pa either way,
 * dead ends, and by turns fixed flows to 2 kg/s, fan curves to 2 kPa and one-way dampers. Every zone has a
 * way to a boundary, so every network has exactly one solution.
 *
 * @param seed - its number
 * @param range - of its number of zones
 * @returns description and scenario
 */
export function hardNetwork(
  seed: number,
  { least, most }: ZoneRange = { least: 1, most: 30 },
): HardNetwork {
  const random = randomNumbers(seed);
  const zoneCount = least + random.below(most - least + 1);
  const boundaryCount = 1 + random.below(5);
  const zones = numbered('z', zoneCount);
  const boundaries = numbered('o', boundaryCount);
  const ends: [string, string, FlowLawDescription][] = [];
  const anyZone = (): string => zones[random.below(zoneCount)]!;
  const anyBoundary = (): string => boundaries[random.below(boundaryCount)]!;

  // A tree of leaks ties every zone to a boundary; a zone that stays a leaf of it is a dead end.
  zones.forEach((zone, index) => {
    const other = index === 0 ? anyBoundary() : zones[random.below(index)]!;
    ends.push([zone, random.chance(0.2) ? anyBoundary() : other, leak(random)]);
  });
  for (let extra = random.below(3 * zoneCount + 1); extra > 0; extra--) {
    const from = anyZone();
    const to = random.chance(0.6) ? anyBoundary() : anyZone();
    if (from !== to) ends.push([from, to, leak(random)]);
  }
  const family = seed % 3;
  for (let devices = 1 + random.below(1 + Math.ceil(zoneCount / 3)); devices > 0; devices--) {
    const law = device(random, family);
    const pair: [string, string] = [anyZone(), random.chance(0.8) ? anyBoundary() : anyZone()];
    if (pair[0] === pair[1]) continue;
    if (random.chance(0.3)) pair.reverse();
    ends.push([...pair, law]);
  }

  return {
    description: {
      outdoorAir: air,
      zones: zones.map((id) => ({ id, origin: id, heightM: 0, air })),
      boundaries: boundaries.map((id, index) => ({
        id,
        origin: id,
        heightM: 0,
        pressurePa: index === 0 ? 0 : random.between(-60, 60),
        air,
      })),
      links: ends.map(([from, to, law], index): LinkDescription => ({
        id: `e${index}`,
        origin: `e${index}`,
        from,
        to,
        fromHeightM: 0,
        toHeightM: 0,
        law,
      })),
    },
    scenario: {
      linkOffsetPa: Float64Array.from(ends, () =>
        random.chance(0.5) ? random.between(-20, 20) : 0,
      ),
    },
  };
}

function leak(random: RandomNumbers): FlowLawDescription {
  return {
    kind: 'powerLaw',
    coefficientM3PerSPaN: random.decades(1e-5, 10),
    exponent: random.chance(0.3) ? 0.5 : random.between(0.5, 1),
  };
}

function device(random: RandomNumbers, family: number): FlowLawDescription {
  if (family === 0) return { kind: 'fixedFlow', massFlowKgPerS: random.between(-2, 2) };
  if (family === 1) {
    const shutOffPa = random.decades(20, 2000);
    const freeFlow = random.decades(0.01, 2);
    const shares = [0, 0.3, 0.6, 0.8, 1];
    const bend = random.between(1, 3);
    return {
      kind: 'fanCurve',
      points: shares.map((share) => ({
        volumeFlowM3PerS: freeFlow * share,
        pressureRisePa: shutOffPa * (1 - share ** bend),
      })),
      beyondShutOff: random.chance(0.5) ? 'blocked' : 'extended',
    };
  }
  return {
    kind: 'oneWayDamper',
    coefficientM3PerSPaN: random.decades(1e-3, 1),
    exponent: random.chance(0.3) ? 0.5 : random.between(0.5, 1),
    crackingPressurePa: random.chance(0.3) ? 0 : random.between(0, 20),
    ...(random.chance(0.5)
      ? { closedLeakage: { coefficientM3PerSPaN: random.decades(1e-6, 1e-3), exponent: 0.65 } }
      : {}),
  };
}

function numbered(letter: string, count: number): string[] {
  return Array.from({ length: count }, (_, index) => `${letter}${index}`);
}
