import type { Attribution } from '../assessment.js';
import type { NumberPrinter } from './number-printer.js';

/**
 * What an attribution adds up to, and over which orders it was taken.
 *
 * @param attribution - the attribution
 * @param printer - prints in the reader's units
 * @returns sentences
 */
export function attributionWords(attribution: Attribution, printer: NumberPrinter): string {
  const { baselinePa, pressurePa, method } = attribution;
  const orders =
    method.kind === 'all orders'
      ? 'over all orders of switching on'
      : `over ${method.orders} sampled orders of switching on (seed ${method.seed})`;
  return (
    `In Pa: from ${printer.signedPressure(baselinePa)} with nothing running to ` +
    `${printer.signedPressure(pressurePa)}; the averages ${orders} add up to the difference.`
  );
}
