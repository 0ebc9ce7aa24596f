import { exactText, nearestDouble } from './internal/exact.js';
import { normaliseText } from './internal/normalise-text.js';
import { readNumber } from './internal/read-number.js';
import { findUnit, findUnits, type IndexedUnit } from './internal/unit-index.js';
import { UnitsError } from './units-error.js';

/** An exact number and the double nearest to it. */
export interface ExactNumber {
  /** The text of the exact fraction in lowest terms: `381/1250`, `-40`. */
  readonly exact: string;
  /** The nearest double. */
  readonly value: number;
}

/**
 * Converts a number from one unit to another, exactly.
 *
 * Degrees are read as temperatures: `convert('9', 'F', 'C')` is -12.8 °C, not a rise of 5 K.
 *
 * @param value - a decimal or a fraction as text, since most decimals are not exact as doubles
 * @param fromUnit - any spelling of the unit that the value has
 * @param toUnit - any spelling of the unit wanted
 * @returns the exact result and the nearest double [toUnit]
 * @throws UnitsError `units.unknown-unit`, `units.different-dimensions` or `units.not-a-number`
 *
 * @example
 * convert('0.25', 'in. w.c.', 'Pa').value; // => 62.2722275
 *
 * @example
 * convert('-40', 'F', 'C').exact; // => '-40'
 */
export function convert(value: string, fromUnit: string, toUnit: string): ExactNumber {
  const number = value.length <= 100 ? readNumber(normaliseText(value)) : undefined;
  if (number?.kind !== 'number' || number.rest !== '') {
    throw new UnitsError('units.not-a-number', `"${value.slice(0, 60)}" is not a number.`);
  }
  const [from, to] = pair(fromUnit, toUnit);
  const result = number.value.mul(from.factor).add(from.offset).sub(to.offset).div(to.factor);
  return { exact: exactText(result), value: nearestDouble(result) };
}

function pair(fromUnit: string, toUnit: string): readonly [IndexedUnit, IndexedUnit] {
  for (const spelling of [fromUnit, toUnit]) {
    if (findUnits(spelling).length === 0) {
      throw new UnitsError('units.unknown-unit', `There is no unit "${spelling}".`);
    }
  }
  for (const from of findUnits(fromUnit)) {
    const to = findUnit(toUnit, from.definition.dimension);
    if (to) return [from, to];
  }
  throw new UnitsError(
    'units.different-dimensions',
    `"${fromUnit}" and "${toUnit}" do not measure the same thing.`,
  );
}
