import type { Assessment } from '../assessment.js';
import type { NumberPrinter } from './number-printer.js';

/**
 * Size and airtightness of the house in one line.
 *
 * @param assessment - what was assessed
 * @param printer - prints in the reader's units
 * @returns words without a full stop
 */
export function houseWords(assessment: Assessment, printer: NumberPrinter): string {
  const { house } = assessment;
  const size = [
    printer.value(house.floorAreaM2, 'area'),
    printer.value(house.volumeM3, 'volume'),
  ].join(', ');
  return `${size}, ${airtightnessWords(assessment, printer)}`;
}

/**
 * The airtightness cases with their exponent: `310 cfm at 50 Pa (tested), flow exponent 0.65`.
 *
 * @param assessment - what was assessed
 * @param printer - prints in the reader's units
 * @returns words without a full stop
 */
export function airtightnessWords(assessment: Assessment, printer: NumberPrinter): string {
  const { cases, exponent } = assessment.house.airtightness;
  const tested = cases.map(
    ({ name, volumeFlowM3PerS, pressurePa }) =>
      `${printer.flow(volumeFlowM3PerS)} at ${printer.value(pressurePa, 'pressure')} (${name})`,
  );
  return `${tested.join(' to ')}, flow exponent ${printer.value(exponent, 'ratio')}`;
}
