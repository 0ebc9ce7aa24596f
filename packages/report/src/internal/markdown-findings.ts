import type { Finding } from '@evendraft/rules';
import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from '../assessment.js';
import { findingsByUrgency } from './findings-by-urgency.js';
import { fullStop } from './full-stop.js';
import type { MarkdownPage } from './markdown-page.js';
import type { NumberPrinter } from './number-printer.js';
import { situationWords } from './situation-words.js';
import { sourceWords } from './source-words.js';

/** What a section of the full report needs. */
export interface MarkdownSection {
  readonly page: MarkdownPage;
  readonly assessment: Assessment;
  readonly printer: NumberPrinter;
  readonly system: UnitSystem;
}

/**
 * Every finding with its numbers, its situation, its limit's source, its cures and its notes.
 *
 * @param section - page, assessment and printer
 */
export function markdownFindings(section: MarkdownSection): void {
  const { page, assessment, printer } = section;
  const findings = findingsByUrgency(assessment.findings);
  page.heading(2, 'Findings');
  page.paragraph(`Limit set: ${assessment.limitSet.name}, edition ${assessment.limitSet.edition}.`);
  if (findings.length === 0) {
    page.paragraph('Nothing was judged.');
    return;
  }
  page.paragraph(
    'Pressures in Pa. A negative value is a fall or below outdoors; a negative margin is past the ' +
      'limit; within the band on either side of the limit a finding is called near.',
  );
  page.table(
    [
      { header: 'Appliance' },
      { header: 'In' },
      { header: 'Finding' },
      ...['Value', 'Limit', 'Margin', 'Band', 'Baseline'].map((header) => ({
        header,
        align: 'right' as const,
      })),
    ],
    findings.map(({ appliance, zone, verdict, judged }) => [
      appliance,
      zone,
      verdict,
      ...(judged === undefined
        ? []
        : [
            judged.valuePa,
            judged.limitPa,
            judged.marginPa,
            judged.nearBandPa,
            judged.baselinePa,
          ].map(printer.signedPressure)),
    ]),
  );
  for (const finding of findings) oneFinding(finding, section);
}

function oneFinding(finding: Finding, { page, assessment, printer }: MarkdownSection): void {
  const { judged, reason, cures, notes } = finding;
  page.heading(3, `${finding.appliance}: ${finding.verdict}`);
  if (reason !== undefined) page.paragraph(fullStop(reason));
  page.bullets([
    ...(judged === undefined
      ? []
      : [
          `Situation: ${situationWords(judged.situation, assessment, printer)}.`,
          `What is limited: ${judged.quantity}, for: ${fullStop(judged.condition)}`,
          `Source of the limit: ${sourceWords(judged.source)}.`,
          `The programme's own test set-up: ${fullStop(judged.testSetUp)}`,
        ]),
    ...notes.map((note) => `Note: ${fullStop(note)}`),
  ]);
  if (cures.length > 0) {
    page.paragraph(
      'What would cure it, in the usual order; cures with their numbers follow where they were solved:',
    );
    page.numbered(cures.map(fullStop));
  }
}
