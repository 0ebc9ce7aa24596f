import type { FanPoint, FlowLawDescription } from '@evendraft/airflow';
import { afterTest, type Device, type House } from '@evendraft/house';
import type { Remedy } from '../remedy.js';
import { freeName } from './free-name.js';

/** Points of a fan curve stand at least this far apart; ten times what the law asks [Pa]. */
const leastRiseApartPa = 1e-5;

/**
 * A cap on the speed of a fan: its flow falls in proportion, its pressure with the square.
 *
 * The wanted cap is the largest that holds.
 *
 * @param house - the house
 * @param device - id of the device
 * @returns the remedy; its size is the share of the highest speed [-]
 *
 * Source: fan laws of one fan in one air.
 */
export function speedCap(house: House, device: string): Remedy {
  return {
    kind: 'speed cap',
    what: `cap on the speed of the ${device}`,
    dimension: 'share of the highest speed',
    offered: { kind: 'any', least: 0.05, most: 1 },
    wanted: 'largest',
    item: device,
    assumptions: [],
    houseWith: (share) => withDevice(house, device, (found) => cappedAt(found, share)),
  };
}

/**
 * The flow of one device if it were held constant, to see how much may be exhausted without make-up air.
 *
 * @param house - the house
 * @param device - id of the device
 * @param mostM3PerS - the greatest flow to look at; 1 when absent [m³/s]
 * @returns the remedy; its size is the flow at the device's inlet [m³/s], and the largest that holds is wanted
 */
export function exhaustFlow(house: House, device: string, mostM3PerS = 1): Remedy {
  const tested = afterTest(house);
  return {
    kind: 'exhaust flow',
    what: `constant flow of the ${device}`,
    dimension: 'volume flow',
    offered: { kind: 'any', least: mostM3PerS / 1000, most: mostM3PerS },
    wanted: 'largest',
    item: device,
    assumptions: [],
    houseWith: (flowM3PerS) =>
      withDevice(tested, device, (found) => ({
        ...withoutPath(found),
        speeds: found.speeds.slice(-1).map(({ name }) => ({
          name,
          ratedFlowM3PerS: flowM3PerS,
          law: { kind: 'fixedFlow', volumeFlowM3PerS: flowM3PerS },
        })),
      })),
  };
}

/**
 * An opening between two zones that is always open.
 *
 * @param house - the house
 * @param zones - ids of the two zones
 * @returns the remedy; its size is the free area, at a discharge coefficient of 0.6 [m²]
 */
export function transferOpening(house: House, zones: readonly [string, string]): Remedy {
  const item = freeName(house, 'transfer opening');
  const [zone, other] = zones;
  return {
    kind: 'transfer opening',
    what: `transfer opening between the ${zone} and the ${other}`,
    dimension: 'area',
    offered: { kind: 'any', least: 1e-4, most: 2 },
    wanted: 'smallest',
    item,
    assumptions: [
      {
        origin: item,
        what: 'discharge coefficient of the free area',
        value: { si: 0.6, dimension: 'ratio' },
        source: {
          document: 'ASHRAE Handbook Fundamentals, chapter 16, sharp-edged opening',
          status: 'memory',
        },
      },
    ],
    houseWith: (areaM2) => ({
      ...house,
      openings: [
        ...house.openings,
        {
          id: item,
          origin: `remedies.${item}`,
          zone,
          to: { kind: 'zone', zone: other },
          heightM: 0.3,
          law: { kind: 'orifice', areaM2, dischargeCoefficient: 0.6 },
          duringTest: 'sealed',
        },
      ],
    }),
  };
}

/**
 * The airtightness of the house, to see how far air sealing may go.
 *
 * Its leaks keep their places and exponent; the smallest flow at the test pressure that holds is wanted.
 *
 * @param house - the house
 * @returns the remedy; its size is the flow of a blower-door test at 50 Pa [m³/s]
 */
export function airtightness(house: House): Remedy {
  // Leaks that a test left would stand against any other result.
  const { remainingM3PerSPaN: _, ...test } = house.airtightness;
  const tested = Math.max(
    ...test.cases.map(({ volumeFlowM3PerS, pressurePa }) => {
      return volumeFlowM3PerS * (50 / pressurePa) ** test.exponent;
    }),
  );
  return {
    kind: 'airtightness',
    what: 'airtightness of the house',
    dimension: 'volume flow',
    offered: { kind: 'any', least: 0.25 * tested, most: 40 * tested },
    wanted: 'smallest',
    item: test.origin,
    assumptions: [],
    houseWith: (volumeFlowM3PerS) => ({
      ...house,
      airtightness: {
        ...test,
        cases: [{ name: 'planned', volumeFlowM3PerS, pressurePa: 50 }],
      },
    }),
  };
}

function cappedAt(device: Device, share: number): Device {
  const capped = Math.max(...device.speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS)) * share;
  return {
    ...device,
    speeds: device.speeds.map((speed) =>
      speed.ratedFlowM3PerS <= capped
        ? speed
        : {
            name: speed.name,
            ratedFlowM3PerS: capped,
            law: slower(speed.law, capped / speed.ratedFlowM3PerS),
          },
    ),
  };
}

function slower(law: FlowLawDescription, share: number): FlowLawDescription {
  switch (law.kind) {
    case 'fanCurve':
      return {
        ...law,
        points: apart(
          law.points.map(({ pressureRisePa, volumeFlowM3PerS }) => ({
            pressureRisePa: pressureRisePa * share * share,
            volumeFlowM3PerS: volumeFlowM3PerS * share,
          })),
        ),
      };
    case 'fixedFlow':
      return law.volumeFlowM3PerS === undefined
        ? { ...law, massFlowKgPerS: (law.massFlowKgPerS ?? 0) * share }
        : { ...law, volumeFlowM3PerS: law.volumeFlowM3PerS * share };
    default:
      return law;
  }
}

/** Leaves out points whose pressure rises have drawn too near to each other for a curve. */
function apart(points: readonly FanPoint[]): readonly FanPoint[] {
  return points.reduce<readonly FanPoint[]>((kept, point) => {
    const before = kept.at(-1);
    const near =
      before !== undefined &&
      Math.abs(before.pressureRisePa - point.pressureRisePa) < leastRiseApartPa;
    return near ? kept : [...kept, point];
  }, []);
}

function withDevice(house: House, id: string, change: (device: Device) => Device): House {
  return {
    ...house,
    devices: house.devices.map((device) => (device.id === id ? change(device) : device)),
  };
}

/** A constant flow at the room is that of the device as installed, whatever stands in series with its fan. */
function withoutPath(device: Device): Device {
  return Object.fromEntries(
    Object.entries(device).filter(([key]) => key !== 'path'),
  ) as unknown as Device;
}
