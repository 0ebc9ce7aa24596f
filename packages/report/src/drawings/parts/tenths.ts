/**
 * A pressure in tenths, as drawings print it: with a real minus sign, and never minus zero.
 *
 * @param pressurePa - the pressure [Pa]
 * @returns digits without a unit
 *
 * @example
 * tenths(-12.34); // => '−12.3'
 */
export function tenths(pressurePa: number): string {
  const text = pressurePa.toFixed(1);
  return text === '-0.0' ? '0.0' : text.replace('-', '\u2212');
}
