/** A stream of random numbers that depends on its seed alone. */
export interface RandomNumbers {
  /** Evenly between 0 and 1, both excluded [-]. */
  uniform(): number;
  /** A whole number from 0 to below a count. */
  below(count: number): number;
}

/**
 * Random numbers from a seed, the same on every machine.
 *
 * Generator: xoshiro128** of Blackman and Vigna (2018), seeded by the mixer of splitmix32; from memory.
 *
 * @param seed - any whole number
 * @returns the stream
 */
export function randomNumbers(seed: number): RandomNumbers {
  let mixed = seed >>> 0;
  const mix = (): number => {
    mixed = (mixed + 0x9e3779b9) >>> 0;
    let word = mixed;
    word = Math.imul(word ^ (word >>> 16), 0x21f0aaad);
    word = Math.imul(word ^ (word >>> 15), 0x735a2d97);
    return (word ^ (word >>> 15)) >>> 0;
  };
  let [a, b, c, d] = [mix(), mix(), mix(), mix()];
  const next = (): number => {
    const product = Math.imul(b, 5);
    const word = Math.imul((product << 7) | (product >>> 25), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return word;
  };
  const uniform = (): number => (next() + 0.5) / 2 ** 32;
  return { uniform, below: (count) => Math.floor(uniform() * count) };
}
