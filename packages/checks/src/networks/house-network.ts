import type { AirState, FlowLawDescription } from '@evendraft/airflow';
import type { LinkDescription, NetworkDescription, Scenario } from '@evendraft/network';
import { randomNumbers } from './random-numbers.js';

/** A network as a house has it, and a scenario for it. */
export interface HouseNetwork {
  readonly description: NetworkDescription;
  readonly scenario: Scenario;
}

/** What to vary. */
export interface HouseNetworkOptions {
  readonly mostZones: number;
  /** Rooms at different temperatures and links at different heights; false when omitted. */
  readonly stack?: boolean;
}

/**
 * A random house: rooms with leaks to wind-blown faces, doors, exhaust fans, a flap, coefficients within
 * three decades.
 *
 * @param seed - its number
 * @param options - its size, and whether heights and temperatures differ
 * @returns description and scenario
 */
export function houseNetwork(
  seed: number,
  { mostZones, stack = false }: HouseNetworkOptions,
): HouseNetwork {
  const random = randomNumbers(seed);
  const zoneCount = 1 + random.below(mostZones);
  const faces = ['north', 'south', 'roof'];
  const outdoor = airAt(stack ? random.between(-20, 30) : 20);
  const rooms = Array.from({ length: zoneCount }, (_, index) => `room${index}`);
  const links: LinkDescription[] = [];
  const join = (from: string, to: string, law: FlowLawDescription): void => {
    const heightM = stack ? random.between(0, 6) : 0;
    links.push({
      id: `link${links.length}`,
      origin: `link${links.length}`,
      from,
      to,
      fromHeightM: heightM,
      toHeightM: heightM,
      law,
    });
  };

  rooms.forEach((room, index) => {
    for (const face of faces) {
      join(room, face, {
        kind: 'powerLaw',
        coefficientM3PerSPaN: random.decades(3e-4, 3e-2),
        exponent: random.between(0.55, 0.75),
      });
    }
    if (index > 0) {
      const other = rooms[random.below(index)]!;
      join(
        other,
        room,
        random.chance(0.5)
          ? { kind: 'orifice', areaM2: random.decades(5e-3, 0.5), dischargeCoefficient: 0.6 }
          : {
              kind: 'quadratic',
              linearPaSPerM3: random.decades(1, 100),
              quadraticPaS2PerM6: random.decades(10, 1e4),
            },
      );
    }
  });
  const shutOffPa = random.between(50, 300);
  const freeFlow = random.decades(0.02, 0.5);
  join(rooms[0]!, 'roof', {
    kind: 'fanCurve',
    points: [
      { pressureRisePa: shutOffPa, volumeFlowM3PerS: 0 },
      { pressureRisePa: 0.7 * shutOffPa, volumeFlowM3PerS: 0.7 * freeFlow },
      { pressureRisePa: 0, volumeFlowM3PerS: freeFlow },
    ],
    beyondShutOff: 'blocked',
  });
  join(rooms[zoneCount - 1]!, 'south', {
    kind: 'fixedFlow',
    volumeFlowM3PerS: random.between(-0.1, 0.1),
  });
  join('north', rooms[zoneCount - 1]!, {
    kind: 'oneWayDamper',
    coefficientM3PerSPaN: random.decades(1e-3, 3e-2),
    exponent: 0.5,
    crackingPressurePa: random.between(0, 10),
    closedLeakage: { coefficientM3PerSPaN: 1e-5, exponent: 0.65 },
  });

  return {
    description: {
      outdoorAir: outdoor,
      zones: rooms.map((id) => ({
        id,
        origin: id,
        heightM: stack ? random.between(0, 3) : 0,
        air: airAt(stack ? random.between(5, 28) : 20),
      })),
      boundaries: faces.map((id) => ({
        id,
        origin: id,
        heightM: 0,
        pressurePa: random.between(-8, 8),
        air: outdoor,
      })),
      links,
    },
    scenario: { linkOffsetPa: Float64Array.from(links, () => random.between(-2, 2)) },
  };
}

/** Dry air at sea level, by the gas law. */
function airAt(temperatureC: number): AirState {
  return { temperatureC, densityKgPerM3: 101_325 / (287.055 * (temperatureC + 273.15)) };
}
