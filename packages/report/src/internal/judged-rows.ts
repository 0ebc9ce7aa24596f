import type { Finding } from '@evendraft/rules';
import type { ProgrammeTestResult } from '../judged-set.js';
import { countWords } from './count-words.js';
import { findingsByUrgency } from './findings-by-urgency.js';
import { fullStop } from './full-stop.js';
import type { NumberPrinter } from './number-printer.js';

/** States that are named; more are counted. */
const statesNamed = 3;

/**
 * Findings as rows: appliance, verdict, value, limit, margin, situation or reason.
 *
 * @param set - a set of findings
 * @param printer - prints in the reader's units
 * @returns cells
 */
export function judgedRows(
  { findings }: { readonly findings: readonly Finding[] },
  printer: NumberPrinter,
): readonly (readonly string[])[] {
  return findingsByUrgency(findings).map(({ appliance, verdict, judged, reason }) => [
    appliance,
    verdict,
    ...(judged === undefined
      ? ['', '', '', reason ?? '']
      : [
          ...[judged.valuePa, judged.limitPa, judged.marginPa].map(printer.signedPressure),
          `${judged.situation.label}, ${judged.situation.weather}`,
        ]),
  ]);
}

/**
 * Which states a programme's test asks for, and what of them is not modelled.
 *
 * @param test - the test
 * @returns sentences
 */
export function testedStateWords({ states }: ProgrammeTestResult): string {
  const labels = [...new Set(states.map(({ label }) => `"${label}"`))];
  const named = labels.slice(0, statesNamed).join(', ');
  const more =
    labels.length > statesNamed ? ` and ${countWords(labels.length - statesNamed, 'other')}` : '';
  const left = [...new Set(states.flatMap(({ notModelled }) => notModelled))].map(fullStop);
  return [`It asks for ${named}${more}.`, ...left].join(' ');
}
