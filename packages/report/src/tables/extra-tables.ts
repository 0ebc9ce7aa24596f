import { sourceWords } from '../internal/source-words.js';
import type { CodeScreenRow, LeakRow } from '../report-extras.js';
import type { ReportTable } from './report-table.js';

/**
 * The leaks of the envelope and the openings that are modelled apart.
 *
 * @param leaks - leaks, in the order of the house
 * @returns one row a leak
 */
export function leakTable(leaks: readonly LeakRow[]): ReportTable {
  return {
    id: 'leaks',
    caption: 'Leaks and openings',
    note: 'One row a leak of the model. Flow at 50 and at 4 Pa as in an airtightness test; in the baseline and in the worst situation positive out of the house.',
    columns: [
      { header: 'Leak or opening' },
      { header: 'Of' },
      { header: 'To' },
      { header: 'At', quantity: 'length' },
      { header: 'Given as' },
      { header: 'At 50 Pa', quantity: 'smallFlow' },
      { header: 'At 4 Pa', quantity: 'smallFlow' },
      { header: 'Baseline', quantity: 'smallFlow' },
      { header: 'Worst', quantity: 'smallFlow' },
    ],
    rows: leaks.map((each) => [
      each.item,
      each.zone,
      each.to,
      each.heightM,
      each.given,
      each.at50PaM3PerS,
      each.at4PaM3PerS,
      each.baselineFlowM3PerS,
      each.worstFlowM3PerS,
    ]),
  };
}

/**
 * Checks against codes with their arithmetic.
 *
 * @param screens - one entry a check
 * @returns one row a check
 */
export function codeScreenTable(screens: readonly CodeScreenRow[]): ReportTable {
  return {
    id: 'code-screens',
    caption: 'Code screens',
    note: 'The authority that has jurisdiction decides; this is a screen of what a code asks.',
    columns: [
      { header: 'Rule' },
      { header: 'For' },
      { header: 'Finding' },
      { header: 'Arithmetic' },
      { header: 'Source' },
    ],
    rows: screens.map(({ rule, subject, verdict, arithmetic, source }) => [
      rule,
      subject,
      verdict,
      arithmetic,
      sourceWords(source),
    ]),
  };
}
