/**
 * Everything about one exponent n that x^n needs beside the bits of x, for exponents that many links share: from
 * 0 the binomial coefficients n over 1 to 4, then 512 pairs 1/c and c^n, then by the exponent field of a double
 * 2^-e, then 2^(n e).
 *
 * x = 2^e c (1 + r) with c one of 512 centres and |r| < 2^-10, so x^n = 2^(n e) c^n (1 + r)^n: two numbers from
 * the table and a binomial series of degree 4, whose next term is below 4e-17 for |n| ≤ 1. Within 1e-15 of itself.
 * One array and no array patterns, so that the compiler builds `tabledPower` into the loops that call it.
 */
type PowerTable = Float64Array;

const centresAt = 4;
const inversePowersAt = centresAt + 1024;
const powersAt = inversePowersAt + 2047;

const tables = new Map<number, PowerTable>();
const mostTables = 64;

/** x^n from the table of n, for a positive x; the sign bit of its upper half may be set. */
export function tabledPower(table: PowerTable, x: number, high: number): number {
  const field = (high >> 20) & 2047;
  const centre = centresAt + ((high >>> 10) & 1022);
  const r = x * table[inversePowersAt + field]! * table[centre]! - 1;
  const series = 1 + r * (table[0]! + r * (table[1]! + r * (table[2]! + r * table[3]!)));
  return table[powersAt + field]! * table[centre + 1]! * series;
}

/** The table of an exponent, made once. */
export function powerTable(exponent: number): PowerTable {
  const known = tables.get(exponent);
  if (known !== undefined) return known;
  const table = new Float64Array(powersAt + 2047);
  const n = exponent;
  table[0] = n;
  table[1] = (table[0] * (n - 1)) / 2;
  table[2] = (table[1] * (n - 2)) / 3;
  table[3] = (table[2] * (n - 3)) / 4;
  for (let i = 0; i < 512; i++) {
    const inverse = 1 / (1 + (i + 0.5) / 512);
    table[centresAt + 2 * i] = inverse;
    // Of the inverse as rounded, so that rounding it costs nothing.
    table[centresAt + 2 * i + 1] = inverse ** -exponent;
  }
  for (let field = 0; field < 2047; field++) {
    table[inversePowersAt + field] = 2 ** (1023 - field);
    table[powersAt + field] = 2 ** (exponent * (field - 1023));
  }
  if (tables.size >= mostTables) tables.clear();
  tables.set(exponent, table);
  return table;
}
