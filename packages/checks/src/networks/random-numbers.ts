/** A stream of random numbers that is the same for the same seed everywhere. */
export interface RandomNumbers {
  /** Between two numbers, uniform. */
  between(least: number, most: number): number;
  /** Between two positive numbers, uniform in the logarithm. */
  decades(least: number, most: number): number;
  /** A whole number from 0 to count − 1. */
  below(count: number): number;
  /** True with this probability. */
  chance(probability: number): boolean;
}

/**
 * Random numbers from a seed.
 * Source: mulberry32, public domain, by Tommy Ettinger (from memory).
 *
 * @param seed - any whole number
 * @returns a stream
 */
export function randomNumbers(seed: number): RandomNumbers {
  let state = seed >>> 0;
  const unit = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    between: (least, most) => least + (most - least) * unit(),
    decades: (least, most) => least * (most / least) ** unit(),
    below: (count) => Math.floor(count * unit()),
    chance: (probability) => unit() < probability,
  };
}
