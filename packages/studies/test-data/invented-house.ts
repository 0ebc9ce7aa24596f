// Houses for tests, synthetic, made for this project.
import { typicalFanCurve, type FlowLawDescription } from '@evendraft/airflow';
import {
  compileHouse,
  type CompiledHouse,
  type Device,
  type House,
  type MakeUpOpening,
} from '@evendraft/house';

/** A house of rooms in a row, all of the same size, but for what is given. */
export function inventedHouse(
  given: Partial<House> = {},
  rooms: readonly string[] = ['hall', 'utility'],
): House {
  return {
    name: 'Test Row 2',
    floorAreaM2: 200,
    volumeM3: 500,
    altitudeM: 0,
    frontFacesDeg: 0,
    sideRatio: 1,
    zones: rooms.map((id) => ({
      id,
      origin: `zones.${id}`,
      kind: 'living' as const,
      floorHeightM: 0,
      heightM: 2.5,
      volumeM3: 500 / rooms.length,
      temperatureC: 20,
    })),
    surroundings: [],
    airtightness: {
      origin: 'airtightness',
      exponent: 0.65,
      cases: [{ name: 'tested', volumeFlowM3PerS: 0.2, pressurePa: 50 }],
      guarded: false,
      direction: 'not stated',
    },
    leakShares: rooms.map((zone) => ({
      origin: 'leakage',
      zone,
      surface: 'walls',
      to: { kind: 'outdoors' },
      share: 1 / rooms.length,
    })),
    openings: [],
    doors: rooms.slice(1).map((room, index) => ({
      id: `${room} door`,
      origin: `doors.${room} door`,
      between: [rooms[index]!, room],
      shut: hole(0.01),
      open: hole(1.8),
      positions: ['open', 'shut'],
      baselinePosition: 'open',
    })),
    devices: [],
    makeUpOpenings: [],
    ventilators: [],
    appliances: [
      {
        id: 'water heater',
        origin: 'appliances.water heater',
        kind: 'water heater',
        vent: 'natural draft',
        fuel: 'gas',
        zone: rooms.at(-1)!,
        sharesVentWith: [],
        ventDamper: false,
      },
    ],
    weathers: [weather('still', 20), weather('cold', -10)],
    assumptions: [],
    digest: 'sha256:none',
    ...given,
  };
}

export function weather(
  name: string,
  outdoorTemperatureC: number,
  windSpeedMPerS = 0,
): House['weathers'][number] {
  return { name, origin: `weather.${name}`, outdoorTemperatureC, windSpeedMPerS, windFromDeg: 0 };
}

/** A sharp-edged hole of discharge coefficient 0.6. */
export function hole(areaM2: number): FlowLawDescription {
  return { kind: 'orifice', areaM2, dischargeCoefficient: 0.6 };
}

/** A hole of 0.2 m² that is always there between the first two rooms. */
export function passBetween(): House['openings'][number] {
  return {
    id: 'pass',
    origin: 'openings.pass',
    zone: 'hall',
    to: { kind: 'zone', zone: 'utility' },
    heightM: 1,
    law: hole(0.2),
    duringTest: 'open',
  };
}

export function leak(coefficientM3PerSPaN: number): FlowLawDescription {
  return { kind: 'powerLaw', coefficientM3PerSPaN, exponent: 0.65 };
}

export function constantFlow(volumeFlowM3PerS: number): FlowLawDescription {
  return { kind: 'fixedFlow', volumeFlowM3PerS };
}

/** A fan on the typical curve at one speed of its highest flow. */
export function fan(
  ratedFlowM3PerS: number,
  speedFlowM3PerS = ratedFlowM3PerS,
): FlowLawDescription {
  return {
    kind: 'fanCurve',
    points: typicalFanCurve({
      ratedFlowM3PerS,
      speedFlowM3PerS,
      ratingPressurePa: 62.5,
      shutOffPressurePa: 224,
    }),
    beyondShutOff: 'blocked',
  };
}

/** An exhaust device with the laws of its speeds, slowest first, but for what is given. */
export function device(
  id: string,
  speeds: Readonly<Record<string, FlowLawDescription>>,
  given: Partial<Device> = {},
): Device {
  return {
    id,
    origin: `exhaust.${id}`,
    kind: 'exhaust fan',
    direction: 'exhaust',
    zone: 'utility',
    to: { kind: 'outdoors' },
    heightM: 1,
    speeds: Object.entries(speeds).map(([name, law]) => ({
      name,
      ratedFlowM3PerS: (law.kind === 'fixedFlow' ? law.volumeFlowM3PerS : undefined) ?? 0.1,
      law,
    })),
    duringTest: 'sealed',
    continuous: false,
    ...given,
  };
}

export function makeUp(
  id: string,
  driver: string,
  given: Partial<MakeUpOpening> = {},
): MakeUpOpening {
  return {
    id,
    origin: `makeUp.${id}`,
    zone: 'hall',
    to: { kind: 'outdoors' },
    heightM: 1,
    openLaw: hole(0.03),
    duringTest: 'sealed',
    interlock: { driver },
    ...given,
  };
}

export function compiled(house: House): CompiledHouse {
  const result = compileHouse(house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.compiled;
}
