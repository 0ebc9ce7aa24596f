import { flowAt, type AirState, type FlowLawDescription } from '@evendraft/airflow';
import type { CompiledHouse, Device } from '@evendraft/house';
import type { BalanceQuestion } from './balance-study.js';
import { rootBetween } from './internal/root-between.js';
import { resolveColumns } from './resolve-columns.js';

/** A flow through a fan, and the pressure that goes with it. */
export interface FanPressurePoint {
  readonly flowM3PerS: number;
  /** Rise over the fan, or drop over what it works against [Pa]. */
  readonly pressurePa: number;
}

/** One fan against its duct and the house; plain JSON. */
export interface FanSystemStudy {
  readonly question: 'fan and system';
  readonly device: string;
  readonly speed: string;
  /** By rising flow. */
  readonly fanCurve: readonly FanPressurePoint[];
  /** Duct and open dampers alone; all zero where the curve is that of the device as installed. */
  readonly system: readonly FanPressurePoint[];
  /** What the house, the stack in the duct and the wind at its end add in this situation [Pa]. */
  readonly houseSuctionPa: number;
  /** Where the fan works with the house at outdoor pressure. */
  readonly withoutSuction: FanPressurePoint;
  /** Where it works in this situation. */
  readonly delivered: FanPressurePoint;
}

const pointsOfCurve = 24;
/** Above any pressure that a fan of a house makes [Pa]. */
const mostPressurePa = 1e5;

/**
 * The curve of every running fan that has one, the drop over its duct, and where they meet.
 *
 * What the house adds is the rise over the fan in this situation less the drop over its duct at the flow that it
 * delivers.
 *
 * @param compiled - the compiled house
 * @param question - the situation
 * @returns one entry a running device with a fan curve; none where the situation could not be solved
 */
export function fanSystemStudy(
  compiled: CompiledHouse,
  question: BalanceQuestion,
): readonly FanSystemStudy[] {
  const { state, weather, airtightnessCase = 0 } = question;
  const { result, followed } = resolveColumns(compiled, { state, weather, airtightnessCase });
  if (result.status !== 'solved') return [];
  return compiled.house.devices.flatMap((device): readonly FanSystemStudy[] => {
    const speed = device.speeds.find(({ name }) => name === followed.running.get(device.id));
    const link = compiled.links.findIndex(
      ({ role }) => role.kind === 'device' && role.id === device.id && role.speed === speed?.name,
    );
    if (speed === undefined || link < 0 || speed.law.kind !== 'fanCurve') return [];
    const zone = compiled.network.zoneIndex.get(device.zone) ?? -1;
    const air: AirState =
      device.direction === 'supply'
        ? weather.outdoorAir
        : {
            temperatureC: weather.zoneAir.temperatureC[zone]!,
            densityKgPerM3: weather.zoneAir.densityKgPerM3[zone]!,
          };
    const drop = (flowM3PerS: number): number =>
      pathParts(device).reduce((sum, law) => sum + dropOver(law, flowM3PerS, air), 0);
    const fan = [...speed.law.points].sort((a, b) => a.volumeFlowM3PerS - b.volumeFlowM3PerS);
    const delivered = {
      flowM3PerS: result.links.volumeFlowM3PerS[link]!,
      pressurePa: -result.links.pressureDifferencePa[link]!,
    };
    const most = Math.max(
      delivered.flowM3PerS,
      ...fan.map(({ volumeFlowM3PerS }) => volumeFlowM3PerS),
    );
    return [
      {
        question: 'fan and system',
        device: device.id,
        speed: speed.name,
        fanCurve: fan.map(({ volumeFlowM3PerS, pressureRisePa }) => ({
          flowM3PerS: volumeFlowM3PerS,
          pressurePa: pressureRisePa,
        })),
        system: Array.from({ length: pointsOfCurve + 1 }, (_, step) => {
          const flowM3PerS = (most * step) / pointsOfCurve;
          return { flowM3PerS, pressurePa: drop(flowM3PerS) };
        }),
        houseSuctionPa: delivered.pressurePa - drop(Math.max(0, delivered.flowM3PerS)),
        withoutSuction: meeting({ law: speed.law, air, drop, shutOffPa: fan[0]!.pressureRisePa }),
        delivered,
      },
    ];
  });
}

/** Laws in series with the fan as they stand while it runs. */
function pathParts({ path }: Device): readonly FlowLawDescription[] {
  // Another fan in the path pushes too: it has no drop of its own.
  return [...(path?.before ?? []), ...(path?.after ?? [])]
    .map(({ law }) => law)
    .filter(({ kind }) => kind !== 'fanCurve' && kind !== 'fixedFlow');
}

/** Pressure that drives a volume flow through one part [Pa]. */
function dropOver(law: FlowLawDescription, flowM3PerS: number, air: AirState): number {
  if (flowM3PerS <= 0) return 0;
  const massFlow = flowM3PerS * air.densityKgPerM3;
  return rootBetween(
    (pressurePa) => flowAt(law, pressurePa, { from: air, to: air }).massFlowKgPerS - massFlow,
    [0, mostPressurePa],
  );
}

/** Where a fan meets the drop over its duct. */
function meeting(of: {
  readonly law: FlowLawDescription;
  readonly air: AirState;
  readonly drop: (flowM3PerS: number) => number;
  readonly shutOffPa: number;
}): FanPressurePoint {
  const { law, air, drop, shutOffPa } = of;
  const flowOf = (risePa: number): number =>
    flowAt(law, -risePa, { from: air, to: air }).massFlowKgPerS / air.densityKgPerM3;
  const pressurePa = rootBetween(
    (risePa) => risePa - drop(Math.max(0, flowOf(risePa))),
    [0, shutOffPa],
  );
  return { flowM3PerS: flowOf(pressurePa), pressurePa };
}
