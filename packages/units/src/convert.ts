import type { Dimension } from './dimension.js';
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
 * Degrees are read as temperatures; for a difference name the dimension.
 *
 * @param value - a decimal or a fraction as text, since most decimals are not exact as doubles
 * @param fromUnit - any spelling of the unit that the value has
 * @param toUnit - any spelling of the unit wanted
 * @param dimension - needed only where both units measure two things
 * @returns the exact result and the nearest double [toUnit]
 * @throws UnitsError `units.unknown-unit`, `units.different-dimensions` or `units.not-a-number`
 *
 * @example
 * convert('0.25', 'in. w.c.', 'Pa').value; // => 62.2722275
 *
 * @example
 * convert('-40', 'F', 'C').exact; // => '-40'
 */
export function convert(
  value: string,
  fromUnit: string,
  toUnit: string,
  dimension?: Dimension,
): ExactNumber {
  const number = value.length <= 100 ? readNumber(normaliseText(value)) : undefined;
  if (number?.kind !== 'number' || number.rest !== '') {
    throw new UnitsError('units.not-a-number', `"${value.slice(0, 60)}" is not a number.`);
  }
  const [from, to] = pair(fromUnit, toUnit, dimension);
  const result = number.value.mul(from.factor).add(from.offset).sub(to.offset).div(to.factor);
  return { exact: exactText(result), value: nearestDouble(result) };
}

function pair(
  fromUnit: string,
  toUnit: string,
  dimension: Dimension | undefined,
): readonly [IndexedUnit, IndexedUnit] {
  for (const spelling of [fromUnit, toUnit]) {
    if (findUnits(spelling).length === 0) {
      throw new UnitsError('units.unknown-unit', `There is no unit "${spelling}".`);
    }
  }
  for (const from of findUnits(fromUnit)) {
    const measured = from.definition.dimension;
    if (dimension !== undefined && measured !== dimension) continue;
    const to = findUnit(toUnit, measured);
    if (to) return [from, to];
  }
  const both = dimension === undefined ? 'the same dimension' : dimension;
  throw new UnitsError(
    'units.different-dimensions',
    `"${fromUnit}" and "${toUnit}" do not both measure ${both}.`,
  );
}
