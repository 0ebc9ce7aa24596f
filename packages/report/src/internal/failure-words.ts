import type { RemedyRow } from '@evendraft/remedies';
import { formatQuantity, type UnitSystem } from '@evendraft/units';
import { numberPrinter } from './number-printer.js';

/**
 * The other side of a remedy: how far it pushes outward, what happens where it fails, what it leaks when shut.
 *
 * @param row - the remedy
 * @param system - units of the reader
 * @returns sentences; none of what was not solved
 */
export function failureSentences(
  { highest, failures, closedDamper }: RemedyRow,
  system: UnitSystem,
): readonly string[] {
  const printer = numberPrinter(system);
  const [asItIs, ...failed] = failures;
  const air = (massFlowKgPerS: number): string =>
    formatQuantity(massFlowKgPerS, 'massFlow', {
      system,
      unit: system === 'us' ? 'scfm' : 'kg/h',
      decimals: 0,
    });
  const stated = closedDamper?.stated;
  return [
    ...(highest === undefined
      ? []
      : [
          `Highest of any room against outdoors: ${printer.signedPressure(highest.pressurePa)} Pa in ${highest.zone}, with ${highest.situation}.`,
        ]),
    ...(asItIs === undefined
      ? []
      : [
          `Lowest of any room: ${printer.signedPressure(asItIs.lowest.pressurePa)} Pa as it is; ${failed
            .map(
              ({ failure, lowest, infiltrationKgPerS }) =>
                `${failure} ${printer.signedPressure(lowest.pressurePa)} Pa${
                  infiltrationKgPerS === undefined || asItIs.infiltrationKgPerS === undefined
                    ? ''
                    : more(infiltrationKgPerS - asItIs.infiltrationKgPerS, air)
                }`,
            )
            .join('; ')}.`,
        ]),
    ...(stated === undefined
      ? []
      : [
          `Shut, it adds ${printer.flow(stated.flowAt50PaM3PerS)} at 50 Pa to the airtightness test, ${formatQuantity(stated.shareOfTested, 'ratio', { system, unit: '%', decimals: 1 })} of what was tested.`,
        ]),
  ];
}

/** Below this a change of the air that enters is none [kg/s]. */
const noChangeKgPerS = 0.0005;

function more(changeKgPerS: number, air: (massFlowKgPerS: number) => string): string {
  return Math.abs(changeKgPerS) < noChangeKgPerS
    ? ''
    : ` and ${air(Math.abs(changeKgPerS))} ${changeKgPerS > 0 ? 'more' : 'less'} air with nothing on`;
}
