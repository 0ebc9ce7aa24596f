import type { LimitedQuantity } from '@evendraft/rules';
import type { NumberPrinter } from './number-printer.js';

/**
 * A pressure against outdoors with its direction: `12.3 Pa below outdoors`.
 *
 * @param pressurePa - zone minus outdoors [Pa]
 * @param printer - prints the size
 * @returns words without a full stop
 */
export function againstOutdoors(pressurePa: number, printer: NumberPrinter): string {
  if (pressurePa === 0) return 'level with outdoors';
  return `${printer.pressureSize(pressurePa)} ${pressurePa < 0 ? 'below' : 'above'} outdoors`;
}

/**
 * A change from the baseline with its direction: `a fall of 5.3 Pa from its baseline`.
 *
 * @param changePa - pressure minus pressure in the baseline [Pa]
 * @param printer - prints the size
 * @returns words without a full stop
 */
export function fromBaseline(changePa: number, printer: NumberPrinter): string {
  if (changePa === 0) return 'no change from its baseline';
  return `a ${changePa < 0 ? 'fall' : 'rise'} of ${printer.pressureSize(changePa)} from its baseline`;
}

/**
 * The quantity that a limit limits, with its direction.
 *
 * @param quantity - what is limited
 * @param valuePa - its value [Pa]
 * @param printer - prints the size
 * @returns words without a full stop
 */
export function quantityWords(
  quantity: LimitedQuantity,
  valuePa: number,
  printer: NumberPrinter,
): string {
  return quantity === 'change from baseline'
    ? fromBaseline(valuePa, printer)
    : againstOutdoors(valuePa, printer);
}

/**
 * Where a value stands against its limit: `3.3 Pa past it` or `0.6 Pa short of it`.
 *
 * @param marginPa - value minus limit, negative is beyond [Pa]
 * @param printer - prints the size
 * @returns words without a full stop
 */
export function marginWords(marginPa: number, printer: NumberPrinter): string {
  if (marginPa === 0) return 'exactly at it';
  return `${printer.pressureSize(marginPa)} ${marginPa < 0 ? 'past' : 'short of'} it`;
}
