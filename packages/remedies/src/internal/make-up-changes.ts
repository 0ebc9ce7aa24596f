import type { House } from '@evendraft/house';
import type { LimitSet } from '@evendraft/rules';
import {
  exhaustCurveOfRemedy,
  motorizedMakeUp,
  poweredMakeUp,
  sizeRemedy,
  type DuctRun,
  type Situation,
} from '@evendraft/studies';
import { largestExhaust } from '../largest-exhaust.js';
import { targetsOfLimitSet } from '../targets-of-limit-set.js';
import type { HouseChange } from './house-changes.js';

/**
 * Make-up air with the largest exhaust, in the size that the limits of some appliances need.
 *
 * @param house - the house as it is
 * @param of - the limits, ids of the appliances, the run of a duct, and the situation whose weather and doors count
 * in exhaust curves; no curves when absent
 * @returns a motorized duct and a fan, each as sized or as near as it comes; none where nothing is needed
 */
export async function makeUpChanges(
  house: House,
  of: {
    readonly limitSet: LimitSet;
    readonly appliances: readonly string[];
    readonly run: DuctRun;
    readonly curvesIn?: Situation;
    readonly signal?: AbortSignal;
  },
): Promise<readonly HouseChange[]> {
  const { limitSet, appliances, run, curvesIn, signal } = of;
  const watched = signal === undefined ? {} : { signal };
  const largest = largestExhaust(house);
  const targets = targetsOfLimitSet(house, limitSet).targets.filter(({ id }) =>
    appliances.some((appliance) => id.startsWith(`${appliance}: `)),
  );
  if (largest === undefined || targets.length === 0) return [];
  const { zone, id } = largest;
  const changes: HouseChange[] = [];
  for (const remedy of [
    motorizedMakeUp(house, { zone, run, opensWith: { driver: id } }),
    poweredMakeUp(house, { zone, follows: id }),
  ]) {
    const sizing = await sizeRemedy(house, { remedy, targets }, watched);
    if (sizing.status === 'nothing needed') continue;
    const keepsLimits = sizing.status === 'sized';
    const size = keepsLimits ? sizing.size : sizing.best;
    const exhaustCurve =
      curvesIn === undefined
        ? undefined
        : await exhaustCurveOfRemedy(remedy, { size, device: id, situation: curvesIn }, watched);
    changes.push({
      cure: `Bring in air: ${remedy.what}.`,
      makeUp: {
        remedy: remedy.what,
        dimension: remedy.dimension,
        size,
        keepsLimits,
        ...(keepsLimits ? {} : { obstacle: sizing.obstacle }),
      },
      houses: [remedy.houseWith(size)],
      ...(exhaustCurve === undefined ? {} : { exhaustCurve }),
    });
  }
  return changes;
}
