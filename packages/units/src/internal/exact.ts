import Fraction from 'fraction.js';

/** An exact fraction from the text of a decimal or of a fraction; fraction.js is exact only from text. */
export function exact(text: string): Fraction {
  return new Fraction(text);
}

/** The text of an exact fraction: `381/1250`, `-40`. */
export function exactText(value: Fraction): string {
  return value.toFraction();
}

/**
 * The double nearest to an exact fraction, ties to even.
 *
 * Dividing numerator by denominator as doubles rounds three times and overflows for long texts;
 * this rounds once. The quotient is scaled to at least 64 bits with a sticky last bit, so that the
 * conversion of the integer is the only rounding.
 */
export function nearestDouble(value: Fraction): number {
  if (value.n === 0n) return 0;
  const shift = BigInt(64 - bitLength(value.n) + bitLength(value.d));
  const numerator = shift > 0n ? value.n << shift : value.n;
  const denominator = shift < 0n ? value.d << -shift : value.d;
  const quotient = numerator / denominator;
  const sticky = numerator % denominator === 0n ? 0n : 1n;
  const magnitude = Number((quotient << 1n) | sticky) * 2 ** (-Number(shift) - 1);
  return value.s < 0n ? -magnitude : magnitude;
}

function bitLength(value: bigint): number {
  return value.toString(2).length;
}
