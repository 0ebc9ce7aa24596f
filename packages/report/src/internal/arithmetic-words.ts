import type { ArithmeticLine } from '@evendraft/rules';

import { formatQuantity, type UnitSystem } from '@evendraft/units';
import { numberPrinter } from './number-printer.js';

/**
 * One line of a rule's arithmetic in words.
 *
 * @param line - label, expression, value
 * @param system - units in which the value is printed
 * @returns e.g. `floor area: 2180 ft² (given)`, without a full stop
 */
export function arithmeticWords(
  { label, expression, value }: ArithmeticLine,
  system: UnitSystem,
): string {
  const shown =
    typeof value === 'string'
      ? value
      : value.dimension === 'speed'
        ? // Rules speak of air in ducts and at faces, never of wind.
          numberPrinter(system).faceVelocity(value.si)
        : value.dimension === 'area' || value.dimension === 'length'
          ? small(value.si, value.dimension, system)
          : formatQuantity(value.si, value.dimension, { system });
  return `${label}: ${shown} (${expression})`;
}

/** What is smaller than a door is said in the small unit, as on a drawing: 12 in², not 0.0833 ft². */
function small(si: number, dimension: 'area' | 'length', system: UnitSystem): string {
  const isSmall = si > 0 && si < (dimension === 'area' ? 0.5 : 0.6);
  return isSmall
    ? numberPrinter(system).value(si, dimension)
    : formatQuantity(si, dimension, { system });
}
