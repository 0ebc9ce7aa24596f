import {
  houseWeather,
  compileHouse,
  type CompiledHouse,
  type Device,
  type House,
} from '@evendraft/house';
import { balanceStudy, type BalanceQuestion } from './balance-study.js';
import { nextTurn } from './internal/next-turn.js';
import { exhaustFlow } from './sized/house-remedies.js';

/** A point of the curve, or where a speed comes to rest on it. */
export interface ExhaustPoint {
  readonly exhaustFlowM3PerS: number;
  /** Zone minus outdoors [Pa]. */
  readonly pressurePa: number;
}

/** The pressure of a device's zone against the flow it exhausts; plain JSON. */
export interface ExhaustCurveStudy {
  readonly question: 'exhaust curve';
  readonly device: string;
  readonly zone: string;
  /** With nothing running, where the curve begins [Pa]. */
  readonly baselinePa: number;
  /** By rising flow; points that could not be solved are left out. */
  readonly points: readonly ExhaustPoint[];
  /** Where each speed of the device works with nothing else running. */
  readonly operatingPoints: readonly (ExhaustPoint & { readonly speed: string })[];
}

/** What the curve is drawn for, beside the weather, doors and airtightness of a situation. */
export interface ExhaustCurveOf {
  /** Id of a device with speeds. */
  readonly device: string;
  /** Id of a supply fan that is held to the device's flow in proportion along the curve; none when absent. */
  readonly follows?: string;
}

const pointsOfCurve = 16;

/**
 * The pressure of a device's zone for a rising exhaust flow, with nothing else switched on, and the points at
 * which its speeds work.
 *
 * What is interlocked with the device runs and stands open as it does at the device's highest speed.
 *
 * @param compiled - the compiled house
 * @param of - the device, and the situation whose weather, doors and airtightness count
 * @param options - signal
 * @returns the study; undefined where the device has no speed or the baseline could not be solved
 */
export async function exhaustCurveStudy(
  compiled: CompiledHouse,
  of: BalanceQuestion & ExhaustCurveOf,
  options: { readonly signal?: AbortSignal } = {},
): Promise<ExhaustCurveStudy | undefined> {
  const { house } = compiled;
  const device = house.devices.find(({ id }) => id === of.device);
  const fastest = device?.speeds.at(-1);
  const outdoors = house.weathers.find(({ name }) => name === of.weather.name);
  if (device === undefined || fastest === undefined || outdoors === undefined) return undefined;
  const question = (running: Readonly<Record<string, string>>): BalanceQuestion => ({
    ...of,
    state: { running, doors: of.state.doors },
  });
  const baselinePa = pressureIn(compiled, question({}), device)?.pressurePa;
  if (baselinePa === undefined) return undefined;

  const operatingPoints = device.speeds.flatMap(({ name }) => {
    const found = pressureIn(compiled, question({ [device.id]: name }), device);
    return found?.exhaustFlowM3PerS === undefined
      ? []
      : [{ speed: name, exhaustFlowM3PerS: found.exhaustFlowM3PerS, pressurePa: found.pressurePa }];
  });
  const most = Math.max(...device.speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS));
  const points: ExhaustPoint[] = [{ exhaustFlowM3PerS: 0, pressurePa: baselinePa }];
  for (let step = 1; step <= pointsOfCurve; step += 1) {
    const share = step / pointsOfCurve;
    const flowM3PerS = most * share;
    const followed = of.follows === undefined ? house : suppliedAt(house, of.follows, share);
    const result = compileHouse(exhaustFlow(followed, device.id, most).houseWith(flowM3PerS));
    if (!result.ok) continue;
    const { compiled: changed } = result;
    // Without the device's duct the network has fewer nodes, each of which has its air in the weather.
    const weather = houseWeather(changed.house, outdoors);
    const found = pressureIn(
      changed,
      { ...question({ [device.id]: fastest.name }), weather },
      device,
    );
    if (found !== undefined) {
      points.push({ exhaustFlowM3PerS: flowM3PerS, pressurePa: found.pressurePa });
    }
    await nextTurn();
    options.signal?.throwIfAborted();
  }
  return {
    question: 'exhaust curve',
    device: device.id,
    zone: device.zone,
    baselinePa,
    points,
    operatingPoints,
  };
}

/** The house with the constant flows of one supply fan at a share of what they are. */
function suppliedAt(house: House, id: string, share: number): House {
  const at = ({ law, ...speed }: Device['speeds'][number]): Device['speeds'][number] => ({
    ...speed,
    law:
      law.kind === 'fixedFlow' && law.volumeFlowM3PerS !== undefined
        ? { ...law, volumeFlowM3PerS: law.volumeFlowM3PerS * share }
        : law,
  });
  return {
    ...house,
    devices: house.devices.map((each) =>
      each.id === id ? { ...each, speeds: each.speeds.map(at) } : each,
    ),
  };
}

function pressureIn(
  compiled: CompiledHouse,
  question: BalanceQuestion,
  { id, zone }: Device,
): { readonly pressurePa: number; readonly exhaustFlowM3PerS?: number } | undefined {
  const balance = balanceStudy(compiled, question);
  if (balance.status === 'not solved') return undefined;
  const pressurePa = balance.zones.find((each) => each.zone === zone)?.pressurePa;
  if (pressurePa === undefined) return undefined;
  const flow = balance.devices.find((each) => each.device === id)?.deliveredFlowM3PerS;
  return { pressurePa, ...(flow === undefined ? {} : { exhaustFlowM3PerS: flow }) };
}
