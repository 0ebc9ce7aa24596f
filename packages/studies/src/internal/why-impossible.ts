import { seriesFlow, type ChainedLaw, type CompiledHouse } from '@evendraft/house';
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
  const passing = own.filter((index) => {
    const { role } = compiled.links[index]!;
    const shut =
      role.kind === 'device off' || (role.kind === 'make-up' && role.damper === 'closed');
    return !shut && scenario.linkScale?.[index] !== 0;
  });
  // A duct is always there; what it leads to may be shut.
  const isPart = (index: number): boolean => compiled.links[index]!.role.kind === 'part';
  if (own.length > 0 && passing.every(isPart)) return { kind: 'stays shut', item: remedy.item };
  const links = passing.map((index) => compiled.links[index]!.description);
  const atZone = links.filter(({ from, to }) => from === target.zone || to === target.zone);
  const [end] = atZone;
  if (end === undefined || atZone.length > 1 || target.side === 'not above') {
    return { kind: 'does not reach' };
  }
  const change = target.quantity === 'change from baseline';
  const needed = sizeOpening(compiled.network, {
    zoneId: target.zone,
    targetPa: target.limitPa + (change ? situation.baselinePa : 0),
    linkId: end.id,
    scenario,
  });
  if (needed.status !== 'solved') return { kind: 'does not reach' };
  const inwardPa = Math.abs(needed.pressureDifferencePa);
  const carried = seriesFlow(inward(links, target.zone), inwardPa);
  const timesWhatItCarries =
    links.length === 1 ? needed.scale : Math.abs(needed.massFlowKgPerS) / carried;
  // It would carry enough, or the flow would have to go against the pressure: its size is not what fails.
  if (!(timesWhatItCarries > 1)) return { kind: 'does not reach' };
  return {
    kind: 'resistance',
    item: remedy.item,
    neededFlowM3PerS: Math.abs(needed.massFlowKgPerS) / weather.outdoorAir.densityKgPerM3,
    timesWhatItCarries,
  };
}

/** The laws of a chain in its order, each with the direction in which it leads to a zone. */
function inward(
  links: readonly { readonly from: string; readonly to: string; readonly law: ChainedLaw['law'] }[],
  zone: string,
): readonly ChainedLaw[] {
  const chain: ChainedLaw[] = [];
  let end = zone;
  let left = [...links];
  for (;;) {
    const place = end;
    const next = left.find(({ from, to }) => from === place || to === place);
    if (next === undefined) return chain;
    chain.unshift({ law: next.law, reversed: next.from === place });
    end = next.from === place ? next.to : next.from;
    left = left.filter((each) => each !== next);
  }
}
