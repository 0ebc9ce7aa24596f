/**
 * Everything about one exponent n that x^n needs beside the bits of x, for exponents that many links share.
 *
 * x = 2^e c (1 + r) with c one of 128 centres and |r| < 2^-8, so x^n = 2^(n e) c^n (1 + r)^n: two numbers from
 * tables and a binomial series of degree 6, whose next term is below 1e-17 for |n| ≤ 1. Within 1e-15 of itself.
 */
export interface PowerTable {
  /** 128 pairs 1/c and c^n, then for the exponent field of a double 2^-e, then 2^(n e). */
  readonly numbers: Float64Array;
  /** Binomial coefficients n over 1 to 6. */
  readonly binomials: readonly [number, number, number, number, number, number];
}

/** Place of 2^-e in `numbers`, by exponent field. */
const inversePowersAt = 256;
/** Place of 2^(n e) in `numbers`, by exponent field. */
const powersAt = inversePowersAt + 2047;

const tables = new Map<number, PowerTable>();
const mostTables = 64;

/** x^n from the table of n, for a positive x; the sign bit of its upper half may be set. */
export function tabledPower({ numbers, binomials }: PowerTable, x: number, high: number): number {
  const [b1, b2, b3, b4, b5, b6] = binomials;
  const field = (high >> 20) & 2047;
  const centre = (high >>> 12) & 254;
  const r = x * numbers[inversePowersAt + field]! * numbers[centre]! - 1;
  const series = 1 + r * (b1 + r * (b2 + r * (b3 + r * (b4 + r * (b5 + r * b6)))));
  return numbers[powersAt + field]! * numbers[centre + 1]! * series;
}

/** The table of an exponent, made once. */
export function powerTable(exponent: number): PowerTable {
  const known = tables.get(exponent);
  if (known !== undefined) return known;
  const numbers = new Float64Array(powersAt + 2047);
  for (let i = 0; i < 128; i++) {
    const inverse = 1 / (1 + (i + 0.5) / 128);
    numbers[2 * i] = inverse;
    // Of the inverse as rounded, so that rounding it costs nothing.
    numbers[2 * i + 1] = inverse ** -exponent;
  }
  for (let field = 0; field < 2047; field++) {
    numbers[inversePowersAt + field] = 2 ** (1023 - field);
    numbers[powersAt + field] = 2 ** (exponent * (field - 1023));
  }
  const n = exponent;
  const b2 = (n * (n - 1)) / 2;
  const b3 = (b2 * (n - 2)) / 3;
  const b4 = (b3 * (n - 3)) / 4;
  const b5 = (b4 * (n - 4)) / 5;
  const b6 = (b5 * (n - 5)) / 6;
  const table: PowerTable = { numbers, binomials: [n, b2, b3, b4, b5, b6] };
  if (tables.size >= mostTables) tables.clear();
  tables.set(exponent, table);
  return table;
}
