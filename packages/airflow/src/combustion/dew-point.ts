import { saturationPressure } from '../air/saturation-pressure.js';
import { requireBetween } from '../internal/require.js';

/**
 * Temperature below which water condenses out of a gas [°C].
 *
 * The temperature at which `saturationPressure` is the pressure of the vapour, to 1e-9 K. Acids of sulphur condense
 * above it and are not considered.
 *
 * @param vapourPressurePa - partial pressure of the vapour, its share of the wet volume times the pressure [Pa]
 * @returns dew point [°C]
 *
 * @example
 * dewPoint(0.1 * 101325); // => 46.1
 */
export function dewPoint(vapourPressurePa: number): number {
  requireBetween('vapourPressurePa', vapourPressurePa, [1, 101325]);
  let low = -80;
  let high = 120;
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (saturationPressure(middle) < vapourPressurePa) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
