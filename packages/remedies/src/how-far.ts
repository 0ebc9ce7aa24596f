import { compileHouse, type House } from '@evendraft/house';
import type { LimitSet } from '@evendraft/rules';
import {
  airtightness,
  exhaustFlow,
  sizeRemedy,
  togetherStudy,
  type Remedy,
  type SizingResult,
  type TogetherStudy,
} from '@evendraft/studies';
import { largestExhaust } from './largest-exhaust.js';
import { targetsOfLimitSet } from './targets-of-limit-set.js';

/** A flow up to which limits are kept, or down to which; plain JSON. */
export type FlowAnswer =
  | {
      readonly status: 'found';
      readonly flowM3PerS: number;
      /** The nearest flow that was tried beyond it, which fails; absent where none beyond was looked at. */
      readonly failsAtM3PerS?: number;
      /** Least margin at that flow over all situations [Pa]. */
      readonly marginPa: number;
      /** The situation of that margin, in words. */
      readonly situation: string;
      /** Whether every situation was covered. */
      readonly proved: boolean;
      /** False where flows farther inside fail again. */
      readonly monotone: boolean;
    }
  | {
      /** No flow that was looked at keeps the limits. */
      readonly status: 'none';
      readonly leastM3PerS: number;
      readonly mostM3PerS: number;
    };

/** How far a house may go without make-up air before its appliances reach their limits; plain JSON. */
export interface HowFar {
  readonly question: 'how far';
  readonly limitSet: string;
  /** For each appliance the flow at 50 Pa at which it reaches its limit: how far air sealing may go. */
  readonly airtightness: readonly { readonly appliance: string; readonly answer: FlowAnswer }[];
  /** The largest constant flow of the largest exhaust, beside all the others; absent where there is none. */
  readonly largestExhaust?: { readonly device: string; readonly answer: FlowAnswer };
  /** Sets of devices that may run together; absent where there are too many devices to solve every set. */
  readonly together?: TogetherStudy;
  /** Appliances without a limit in the set: nothing here is asked for them. */
  readonly withoutLimit: readonly string[];
}

/** Up to this many devices every set is solved. */
const mostDevicesTogether = 12;

/**
 * Asks the questions of sizing the other way round: how tight, how much exhaust, what together.
 *
 * @param house - the house
 * @param limitSet - the limits to keep
 * @param options - signal and progress
 * @returns the answers; none where the set has no limit for any appliance, or the house does not compile
 */
export async function howFar(
  house: House,
  limitSet: LimitSet,
  options: {
    readonly signal?: AbortSignal;
    readonly onProgress?: (done: number, of: number) => void;
  } = {},
): Promise<HowFar> {
  const watched = options.signal === undefined ? {} : { signal: options.signal };
  const { targets, withoutLimit } = targetsOfLimitSet(house, limitSet);
  const head = { question: 'how far', limitSet: limitSet.id, withoutLimit } as const;
  const result = compileHouse(house);
  if (targets.length === 0 || !result.ok) return { ...head, airtightness: [] };

  const steps = targets.length + 2;
  const tightness: { appliance: string; answer: FlowAnswer }[] = [];
  for (const [index, target] of targets.entries()) {
    const remedy = airtightness(house);
    const sizing = await sizeRemedy(house, { remedy, targets: [target] }, watched);
    const appliance = target.id.slice(0, target.id.indexOf(': '));
    tightness.push({ appliance, answer: flowAnswer(sizing, remedy) });
    options.onProgress?.(index + 1, steps);
  }
  const exhaust = largestExhaust(house);
  const held = exhaust && exhaustFlow(house, exhaust.id);
  const largest =
    held && flowAnswer(await sizeRemedy(house, { remedy: held, targets }, watched), held);
  options.onProgress?.(steps - 1, steps);
  const switched = house.devices.filter(
    ({ speeds, interlock }) => speeds.length > 0 && interlock === undefined,
  ).length;
  const others = house.ventilators.length + (house.forcedAir ?? []).length;
  return {
    ...head,
    airtightness: tightness,
    ...(exhaust === undefined || largest === undefined
      ? {}
      : { largestExhaust: { device: exhaust.id, answer: largest } }),
    ...(switched + others > mostDevicesTogether
      ? {}
      : { together: await togetherStudy(result.compiled, targets, watched) }),
  };
}

function flowAnswer(sizing: SizingResult, { offered }: Remedy): FlowAnswer {
  const [tightest] = [...sizing.margins].sort((a, b) => a.marginPa - b.marginPa);
  if (sizing.status !== 'sized' || tightest === undefined) {
    const sizes = offered.kind === 'any' ? [offered.least, offered.most] : offered.sizes;
    return { status: 'none', leastM3PerS: Math.min(...sizes), mostM3PerS: Math.max(...sizes) };
  }
  const { size, failsAt, proved, monotone } = sizing;
  const { marginPa, situation } = tightest;
  return {
    status: 'found',
    flowM3PerS: size,
    ...(failsAt === undefined ? {} : { failsAtM3PerS: failsAt }),
    marginPa,
    situation: `${situation.label}, ${situation.weather}`,
    proved,
    monotone,
  };
}
