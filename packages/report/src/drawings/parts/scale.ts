/** Places a value on a drawing [px]. */
export type Scale = (value: number) => number;

/** Two ends of a range. */
export type Interval = readonly [number, number];

/**
 * A straight scale.
 *
 * @param domain - values at both ends
 * @param range - where they lie [px]
 * @returns the place of any value [px]; the middle where both ends are the same value
 */
export function straightScale(domain: Interval, range: Interval): Scale {
  const [from, to] = domain;
  const [start, end] = range;
  const perValue = from === to ? 0 : (end - start) / (to - from);
  const origin = from === to ? (start + end) / 2 : start;
  return (value) => origin + (value - from) * perValue;
}

/**
 * A scale that is stretched near zero: distance goes with the square root of a value's size, so that
 * a limit of 2 Pa can be told from zero beside a fall of 130 Pa.
 *
 * @param domain - values at both ends
 * @param range - where they lie [px]
 * @returns the place of any value [px]
 */
export function stretchedScale(domain: Interval, range: Interval): Scale {
  const root = (value: number): number => Math.sign(value) * Math.sqrt(Math.abs(value));
  const straight = straightScale([root(domain[0]), root(domain[1])], range);
  return (value) => straight(root(value));
}

/**
 * Round values (1, 2 or 5 times a power of ten apart) that cover a range.
 *
 * @param domain - the range, in rising order
 * @param about - how many are wanted, roughly [-]
 * @returns values in rising order, the first at or below the range and the last at or above it
 *
 * @example
 * roundTicks([-13, 0], 4); // => [-15, -10, -5, 0]
 */
export function roundTicks(domain: Interval, about: number): readonly number[] {
  const [from, to] = domain;
  const span = to - from || Math.abs(to) || 1;
  const step = roundStep(span / Math.max(1, about));
  const first = Math.floor(from / step + 1e-9);
  const last = Math.ceil(to / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    // Counting in whole steps keeps 0.3 from becoming 0.30000000000000004.
    Number(((first + index) * step).toPrecision(12)),
  );
}

/**
 * Round values for a stretched scale: 1, 2, 5, 10, 20 … on both sides of zero.
 *
 * @param domain - the range, in rising order
 * @returns values within the range, in rising order
 */
export function stretchedTicks(domain: Interval): readonly number[] {
  const [from, to] = domain;
  const sizes: number[] = [];
  for (let power = 1; power <= Math.max(Math.abs(from), Math.abs(to)); power *= 10) {
    sizes.push(power, 2 * power, 5 * power);
  }
  const all = [...sizes.map((size) => -size).reverse(), 0, ...sizes];
  return all.filter((value) => value >= from && value <= to);
}

function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const factor = [1, 2, 5].find((each) => each * power >= rough * (1 - 1e-9)) ?? 10;
  return factor * power;
}
