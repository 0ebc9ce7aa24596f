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
        : formatQuantity(value.si, value.dimension, { system });
  return `${label}: ${shown} (${expression})`;
}
