import {
  roundTicks,
  straightScale,
  stretchedScale,
  stretchedTicks,
  type Interval,
  type Scale,
} from '../drawings/parts/scale.js';

/** The scale of a pressure ladder: outdoor pressure at one end, the deepest value at the other. */
export interface LadderScale {
  /** The scale over a range, which begins at the end of outdoors. */
  readonly scaleOf: (range: Interval) => Scale;
  /** Round values within it, the deepest first [Pa]. */
  readonly ticks: readonly number[];
  /** Whether it is stretched towards zero. */
  readonly stretched: boolean;
}

/** Where a deepest value is so many times a limit, an even scale would hide the limit. */
const stretchFrom = 12;

/**
 * The scale on which values and limits can all be told apart.
 *
 * @param values - every pressure that is shown [Pa]
 * @param limits - the limits among them [Pa]
 * @returns the scale
 */
export function ladderScale(values: readonly number[], limits: readonly number[]): LadderScale {
  const all = [...values, ...limits];
  const lowest = all.reduce((least, value) => Math.min(least, value), -1);
  const highest = all.reduce((most, value) => Math.max(most, value), 0);
  const smallestLimit = limits.reduce((most, limit) => Math.max(most, limit), lowest);
  if (lowest < stretchFrom * smallestLimit) {
    const domain: Interval = [lowest * 1.08, highest * 1.1];
    return {
      scaleOf: (range) => stretchedScale([domain[1], domain[0]], range),
      ticks: stretchedTicks(domain),
      stretched: true,
    };
  }
  const ticks = roundTicks([lowest, highest], 6);
  const domain: Interval = [ticks.at(-1) ?? 0, ticks[0] ?? -1];
  return { scaleOf: (range) => straightScale(domain, range), ticks, stretched: false };
}
