import type { CompiledHouse } from '@evendraft/house';
import { resolveColumns } from '../resolve-columns.js';
import { sizeOpening } from '@evendraft/network';
import { questionOf } from '../question-of.js';
import type { Remedy } from '../remedy.js';
import type { TargetMargin } from './target-margins.js';

/** What stands in the way of a remedy, in the situation of its worst margin. */
export type SizingObstacle =
  /** What is added stays shut there, because what opens it does not run. */
  | { readonly kind: 'stays shut'; readonly item: string }
  /** It carries too little at the pressure of the target. */
  | {
      readonly kind: 'resistance';
      readonly item: string;
      /** Air that would have to come in to hold the target, at outdoor density [m³/s]. */
      readonly neededFlowM3PerS: number;
      /** By what it carries at the size that comes closest [-]. */
      readonly timesWhatItCarries: number;
    }
  /** The remedy does not reach what causes it: another zone, another device, the weather. */
  | { readonly kind: 'does not reach' };

/**
 * Why a remedy does not keep its targets at the size that comes closest.
 *
 * @param remedy - the remedy
 * @param compiled - the house with it at that size
 * @param worst - the worst margin there
 * @returns what stands in the way
 */
export function whyImpossible(
  remedy: Remedy,
  compiled: CompiledHouse,
  worst: TargetMargin,
): SizingObstacle {
  const { target, situation } = worst;
  const { state, weather, airtightnessCase = 0 } = questionOf(compiled, situation);
  const { scenario } = resolveColumns(compiled, { state, weather, airtightnessCase });
  const own = compiled.links.flatMap(({ role }, index) =>
    'id' in role && role.id === remedy.item ? [index] : [],
  );
  const open = own.filter((index) => {
    const { role } = compiled.links[index]!;
    const shut =
      role.kind === 'device off' || (role.kind === 'make-up' && role.damper === 'closed');
    return !shut && scenario.linkScale?.[index] !== 0;
  });
  if (own.length > 0 && open.length === 0) return { kind: 'stays shut', item: remedy.item };
  const ends = open.length === 1 ? compiled.links[open[0]!]!.description : undefined;
  if (ends === undefined || (ends.from !== target.zone && ends.to !== target.zone)) {
    return { kind: 'does not reach' };
  }
  const change = target.quantity === 'change from baseline';
  const needed = sizeOpening(compiled.network, {
    zoneId: target.zone,
    targetPa: target.limitPa + (change ? situation.baselinePa : 0),
    linkId: ends.id,
    scenario,
  });
  if (needed.status !== 'solved' || target.side === 'not above') return { kind: 'does not reach' };
  return {
    kind: 'resistance',
    item: remedy.item,
    neededFlowM3PerS: Math.abs(needed.massFlowKgPerS) / weather.outdoorAir.densityKgPerM3,
    timesWhatItCarries: needed.scale,
  };
}
