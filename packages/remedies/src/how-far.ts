import { compileHouse, type House } from '@evendraft/house';
import type { LimitSet } from '@evendraft/rules';
import {
  airtightness,
  exhaustFlow,
  sizeRemedy,
  togetherStudy,
  type SizingResult,
  type TogetherStudy,
} from '@evendraft/studies';
import { largestExhaust } from './largest-exhaust.js';
import { targetsOfLimitSet } from './targets-of-limit-set.js';

/** How far a house may go without make-up air before its appliances reach their limits; plain JSON. */
export interface HowFar {
  readonly question: 'how far';
  readonly limitSet: string;
  /** For each appliance the flow at 50 Pa at which it reaches its limit: how far air sealing may go. */
  readonly airtightness: readonly { readonly appliance: string; readonly sizing: SizingResult }[];
  /** The largest constant flow of the largest exhaust, beside all the others; absent where there is none. */
  readonly largestExhaust?: { readonly device: string; readonly sizing: SizingResult };
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
 * @param options - signal
 * @returns the answers; none where the set has no limit for any appliance, or the house does not compile
 */
export async function howFar(
  house: House,
  limitSet: LimitSet,
  options: { readonly signal?: AbortSignal } = {},
): Promise<HowFar> {
  const { targets, withoutLimit } = targetsOfLimitSet(house, limitSet);
  const head = { question: 'how far', limitSet: limitSet.id, withoutLimit } as const;
  const result = compileHouse(house);
  if (targets.length === 0 || !result.ok) return { ...head, airtightness: [] };

  const tightness: { appliance: string; sizing: SizingResult }[] = [];
  for (const target of targets) {
    const remedy = airtightness(house);
    const sizing = await sizeRemedy(house, { remedy, targets: [target] }, options);
    tightness.push({ appliance: target.id.slice(0, target.id.indexOf(': ')), sizing });
  }
  const exhaust = largestExhaust(house);
  const switched = house.devices.filter(
    ({ speeds, interlock }) => speeds.length > 0 && interlock === undefined,
  ).length;
  const others = house.ventilators.length + (house.forcedAir ?? []).length;
  return {
    ...head,
    airtightness: tightness,
    ...(exhaust === undefined
      ? {}
      : {
          largestExhaust: {
            device: exhaust.id,
            sizing: await sizeRemedy(
              house,
              { remedy: exhaustFlow(house, exhaust.id), targets },
              options,
            ),
          },
        }),
    ...(switched + others > mostDevicesTogether
      ? {}
      : { together: await togetherStudy(result.compiled, targets, options) }),
  };
}
