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
    note: 'Flow at the pressure of the airtightness test.',
    columns: [
      { header: 'Leak or opening' },
      { header: 'Of' },
      { header: 'To' },
      { header: 'At', quantity: 'length' },
      { header: 'Flow', quantity: 'volumeFlow' },
      { header: 'Share', quantity: 'share' },
    ],
    rows: leaks.map((each) => [
      each.item,
      each.zone,
      each.to,
      each.heightM,
      each.volumeFlowM3PerS,
      each.share,
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
