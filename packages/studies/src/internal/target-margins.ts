import type { PressureRangeStudy, ZoneRange } from '../pressure-range-study.js';
import type { PressureTarget } from '../pressure-target.js';
import type { WorstPressure } from '../worst-of-balances.js';

/** How far the worst situation is from a target. */
export interface TargetMargin {
  readonly target: PressureTarget;
  /** Negative is beyond the target [Pa]. */
  readonly marginPa: number;
  /** The value held against it [Pa]. */
  readonly valuePa: number;
  readonly situation: WorstPressure;
}

/**
 * The margin of every target over all situations.
 *
 * @param targets - targets of zones of the house
 * @param range - its range of pressures
 * @returns margins in the order of the targets; a zone without a solved situation has none
 */
export function marginsOf(
  targets: readonly PressureTarget[],
  range: PressureRangeStudy,
): readonly TargetMargin[] {
  return targets.flatMap((target) => {
    const zone = range.zones.find((each) => each.zone === target.zone);
    return zone === undefined ? [] : [marginOf(target, extremeFor(target, zone))];
  });
}

/**
 * The margin of a target in one situation.
 *
 * @param target - the target
 * @param situation - a situation of its zone
 * @returns value and margin
 */
export function marginOf(target: PressureTarget, situation: WorstPressure): TargetMargin {
  const valuePa =
    target.quantity === 'zone minus outdoors'
      ? situation.pressurePa
      : situation.changeFromBaselinePa;
  const above = valuePa - target.limitPa;
  return { target, valuePa, situation, marginPa: target.side === 'not below' ? above : -above };
}

function extremeFor({ quantity, side }: PressureTarget, zone: ZoneRange): WorstPressure {
  if (quantity === 'zone minus outdoors') return side === 'not below' ? zone.lowest : zone.highest;
  return side === 'not below' ? zone.largestFall : zone.largestRise;
}
