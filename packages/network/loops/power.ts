// x^n as in power.ts of @evendraft/airflow, bit for bit, from the same table, which lies at the start of memory:
// 512 pairs 1/c and log2 c, 2^(i/256), 2^(i − 1023). What it does and why it is exact is said there.
const roots: usize = 1024 << 3;
const powers: usize = 1280 << 3;

/** x^n for a positive x, from the bits of x, whose sign may be set. */
export function power(x: f64, bits: u64, n: f64): f64 {
  const exponent = <usize>((bits >> 52) & 2047);
  const centre = (<usize>((bits >> 43) & 511)) << 4;
  const r = x * load<f64>(powers + ((2046 - exponent) << 3)) * load<f64>(centre) - 1.0;
  const y =
    n * <f64>(<i32>exponent - 1023) +
    (n * load<f64>(centre, 8) +
      n *
        r *
        (1.4426950408889634 -
          r * (0.7213475204444817 - r * (0.4808983469629878 - r * 0.36067376022224085))));
  const k = Math.floor(256.0 * y + 0.5);
  const f = y - k * 0.00390625;
  const rest =
    1.0 +
    f *
      (0.6931471805599453 +
        f * (0.2402265069591007 + f * (0.05550410866482158 + f * 0.009618129107628477)));
  return rest * exactPower(<i32>k);
}

/** x^n within 1e-6 of itself, and at most 2^most. */
export function roughPower(x: f64, n: f64, most: f64): f64 {
  const bits = reinterpret<u64>(x);
  const exponent = <usize>((bits >> 52) & 2047);
  const centre = (<usize>((bits >> 43) & 511)) << 4;
  const r = x * load<f64>(powers + ((2046 - exponent) << 3)) * load<f64>(centre) - 1.0;
  const log2 = <f64>(<i32>exponent - 1023) + (load<f64>(centre, 8) + r * 1.4426950408889634);
  const y = min(n * log2, most);
  const k = Math.floor(256.0 * y + 0.5);
  return (1.0 + (y - k * 0.00390625) * 0.6931471805599453) * exactPower(<i32>k);
}

/** 2^(k/256) */
function exactPower(k: i32): f64 {
  return (
    load<f64>(roots + ((<usize>(k & 255)) << 3)) *
    load<f64>(powers + ((<usize>((k >> 8) + 1023)) << 3))
  );
}
