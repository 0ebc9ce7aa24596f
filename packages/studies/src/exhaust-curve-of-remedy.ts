import { compileHouse } from '@evendraft/house';
import { exhaustCurveStudy, type ExhaustCurveStudy } from './exhaust-curve-study.js';
import { questionOf } from './question-of.js';
import type { Remedy } from './remedy.js';
import type { Situation } from './state-balance.js';

/**
 * The pressure of a device's zone for a rising exhaust flow in the house that has a remedy.
 *
 * An interlocked damper stands open from the first flow on, so that the curve may step there; a fan that follows
 * the device follows its flow in proportion; a cap ends the curve.
 *
 * @param remedy - the remedy
 * @param of - its size, id of the device, and the situation whose weather, doors and airtightness count
 * @param options - signal
 * @returns the curve; undefined where the house with the remedy does not compile or the curve has no baseline
 */
export async function exhaustCurveOfRemedy(
  remedy: Remedy,
  of: { readonly size: number; readonly device: string; readonly situation: Situation },
  options: { readonly signal?: AbortSignal } = {},
): Promise<ExhaustCurveStudy | undefined> {
  const { size, device, situation } = of;
  const result = compileHouse(remedy.houseWith(size));
  if (!result.ok) return undefined;
  const { compiled } = result;
  return exhaustCurveStudy(
    compiled,
    {
      ...questionOf(compiled, situation),
      device,
      ...(remedy.kind === 'powered make-up air' ? { follows: remedy.item } : {}),
    },
    options,
  );
}
