/** All numbers between two, both included. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The interval of one number. */
export function point(value: number): Interval {
  return { low: value, high: value };
}

/** The smallest interval that holds all of several. */
export function hull(intervals: readonly Interval[]): Interval {
  return {
    low: Math.min(...intervals.map(({ low }) => low)),
    high: Math.max(...intervals.map(({ high }) => high)),
  };
}

/** Numbers that both hold; none where its low end lies above its high one. */
export function meet(one: Interval, other: Interval): Interval {
  return { low: Math.max(one.low, other.low), high: Math.min(one.high, other.high) };
}

/** High end less low end. */
export function widthOf({ low, high }: Interval): number {
  return high - low;
}

/** Sums of a number of each. */
export function plus(one: Interval, other: Interval): Interval {
  return { low: one.low + other.low, high: one.high + other.high };
}

/** Products of a number of an interval with a factor of another that is not negative. */
export function timesShare({ low, high }: Interval, share: Interval): Interval {
  return {
    low: Math.min(low * share.low, low * share.high),
    high: Math.max(high * share.low, high * share.high),
  };
}

/** Multiples by a number. */
export function scaled({ low, high }: Interval, factor: number): Interval {
  return factor < 0
    ? { low: factor * high, high: factor * low }
    : { low: factor * low, high: factor * high };
}

/**
 * Means of several values with weights that are not negative, each known as an interval; exact, because a mean is
 * greatest where the greater values weigh most. Undefined where all weights may be zero and nothing else is known.
 */
export function weightedMean(
  parts: readonly { readonly value: Interval; readonly weight: Interval }[],
): Interval | undefined {
  const possible = parts.filter(({ weight }) => weight.high > 0);
  if (possible.length === 0) return undefined;
  const extreme = (value: (part: Interval) => number, sign: 1 | -1): number => {
    const sorted = [...possible].sort((a, b) => sign * (value(b.value) - value(a.value)));
    let best = -Infinity;
    for (let heavy = 1; heavy <= sorted.length; heavy++) {
      let sum = 0;
      let weights = 0;
      sorted.forEach((part, k) => {
        const weight = k < heavy ? part.weight.high : part.weight.low;
        sum += weight * value(part.value);
        weights += weight;
      });
      best = Math.max(best, (sign * sum) / weights);
    }
    return sign * best;
  };
  return { low: extreme(({ low }) => low, -1), high: extreme(({ high }) => high, 1) };
}

/** Every choice of one of several intervals a side. */
export function product(runs: readonly (readonly Interval[])[]): readonly (readonly Interval[])[] {
  return runs.reduce<readonly (readonly Interval[])[]>(
    (boxes, own) => boxes.flatMap((box) => own.map((run) => [...box, run])),
    [[]],
  );
}
