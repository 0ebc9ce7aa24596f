// x^n as in power.ts of @evendraft/airflow, bit for bit, from the same table, which lies at the start of memory:
// 512 pairs 1/c and log2 c, then 2^(i/256). What it does and why it is exact is said there. Powers of two are taken and
// put on as bits, which is exact too.
const roots: usize = 1024 << 3;
/** 1.5 · 2^44, from which on a double is a multiple of 1/256: adding it rounds, and leaves the multiple in the low bits. */
const rounder: f64 = 26388279066624;

const fractionBits: u64 = 0x000fffffffffffff;
const one: u64 = 0x3ff0000000000000;

/** x^n for a positive normal x, from the bits of x, whose sign may be set. */
export function power(bits: u64, n: f64): f64 {
  const exponent = <i32>((bits >> 52) & 2047) - 1023;
  const centre = (<usize>((bits >> 43) & 511)) << 4;
  const r = reinterpret<f64>((bits & fractionBits) | one) * load<f64>(centre) - 1.0;
  const y =
    n * <f64>exponent +
    (n * load<f64>(centre, 8) +
      n *
        r *
        (1.4426950408889634 -
          r * (0.7213475204444817 - r * (0.4808983469629878 - r * 0.36067376022224085))));
  const rounded = y + rounder;
  const f = y - (rounded - rounder);
  const rest =
    1.0 +
    f *
      (0.6931471805599453 +
        f * (0.2402265069591007 + f * (0.05550410866482158 + f * 0.009618129107628477)));
  return rest * exactPower(rounded);
}

/** x^n within 1e-6 of itself, and at most 2^most. */
export function roughPower(x: f64, n: f64, most: f64): f64 {
  const bits = reinterpret<u64>(x);
  const exponent = <i32>((bits >> 52) & 2047) - 1023;
  const centre = (<usize>((bits >> 43) & 511)) << 4;
  const r = reinterpret<f64>((bits & fractionBits) | one) * load<f64>(centre) - 1.0;
  const log2 = <f64>exponent + (load<f64>(centre, 8) + r * 1.4426950408889634);
  const y = min(n * log2, most);
  const rounded = y + rounder;
  return (1.0 + (y - (rounded - rounder)) * 0.6931471805599453) * exactPower(rounded);
}

/** 2^(k/256) for the multiple k in the low bits. */
function exactPower(rounded: f64): f64 {
  const k = <i32>reinterpret<i64>(rounded);
  const root = load<u64>(roots + ((<usize>(k & 255)) << 3));
  return reinterpret<f64>(root + ((<u64>(<i64>(k >> 8))) << 52));
}
