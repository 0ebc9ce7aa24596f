import type { UncertaintyStudy } from '@evendraft/studies';
import type { NumberPrinter } from './number-printer.js';

/** Inputs named for each zone. */
const inputsNamed = 3;

/**
 * What was drawn, how often, and what the numbers are of.
 *
 * @param study - the study
 * @returns sentences
 */
export function uncertaintyWords(study: UncertaintyStudy): string {
  const failed = study.failed === 0 ? '' : ` ${study.failed} could not be solved and are left out.`;
  const ranges = study.ranges.map(({ kind, device, low, high }) => {
    const of = device === undefined ? '' : ` of ${device}`;
    return `${kind}${of} ${digits(low)} to ${digits(high)}`;
  });
  return (
    `${study.samples} draws, seed ${study.seed}.${failed} Ranges, as factors but for the exponent: ` +
    `${ranges.join(', ')}. They are this project's for a first look unless the source says otherwise. ` +
    'Lowest pressure of each zone over the worst situations of this house, in Pa.'
  );
}

/**
 * One row a limit: name, limit, probability, interval.
 *
 * @param study - the study
 * @param printer - prints in the reader's units
 * @returns cells
 */
export function probabilityRows(
  { targets }: UncertaintyStudy,
  printer: NumberPrinter,
): readonly (readonly string[])[] {
  return targets.map(({ target, probability, between: [low, high] }) => [
    target.id,
    printer.signedPressure(target.limitPa),
    percent(probability),
    `${percent(low)} to ${percent(high)}`,
  ]);
}

/**
 * One row a zone: spread of its lowest pressure, and the inputs that matter most.
 *
 * @param study - the study
 * @param printer - prints in the reader's units
 * @returns cells
 */
export function importanceRows(
  { zones }: UncertaintyStudy,
  printer: NumberPrinter,
): readonly (readonly string[])[] {
  return zones.map(({ zone, pressurePa: { percentiles }, inputs }) => [
    zone,
    ...[percentiles[0], percentiles[2], percentiles[4]].map(printer.signedPressure),
    inputs
      .slice(0, inputsNamed)
      .map(({ input, share }) => `${input} ${percent(share)}`)
      .join(', '),
  ]);
}

function percent(share: number): string {
  const text = (100 * share).toFixed(share > 0 && share < 0.1 ? 1 : 0);
  return `${text} %`;
}

function digits(value: number): string {
  return String(Number(value.toPrecision(3)));
}
