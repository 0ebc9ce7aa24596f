import { remainingLeakage } from './compile/remaining-leakage.js';
import type { House } from './house.js';

/**
 * A house whose leaks stay as its airtightness test left them, whatever is changed in it from then on.
 *
 * A test measured what was open when it was made, and that is taken off its result. A flue that is taken away, or a
 * damper that sticks open, comes after: it changes what is open and not the leaks.
 *
 * @param house - the house as it was tested
 * @returns the same house, from which changed ones may be made
 */
export function afterTest(house: House): House {
  const { airtightness } = house;
  if (airtightness.remainingM3PerSPaN !== undefined) return house;
  const remainingM3PerSPaN = remainingLeakage(house).map((row) => row.coefficientM3PerSPaN);
  return { ...house, airtightness: { ...airtightness, remainingM3PerSPaN } };
}
