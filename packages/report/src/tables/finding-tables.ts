import { findingsByUrgency } from '../internal/findings-by-urgency.js';
import { conditionWords } from '../internal/situation-words.js';
import { sourceWords } from '../internal/source-words.js';
import type { Assessment } from '../assessment.js';
import type { ReportTable } from './report-table.js';

/**
 * The verdict on each appliance with its numbers, the most urgent first.
 *
 * @param assessment - what was found
 * @returns one row a finding
 */
export function verdictTable(assessment: Assessment): ReportTable {
  return {
    id: 'findings',
    caption: 'Verdict on each appliance',
    note:
      `Limits: ${assessment.limitSet.name}, edition ${assessment.limitSet.edition}. A negative ` +
      'value is a fall or below outdoors; a negative margin is past the limit. Within the band ' +
      'on either side of the limit a finding is called near.',
    columns: [
      { header: 'Appliance' },
      { header: 'In' },
      { header: 'Finding' },
      { header: 'Value', quantity: 'pressure' },
      { header: 'Limit', quantity: 'pressure' },
      { header: 'Margin', quantity: 'pressure' },
      { header: 'Band', quantity: 'pressure' },
      { header: 'Baseline', quantity: 'pressure' },
    ],
    rows: findingsByUrgency(assessment.findings).map(({ appliance, zone, verdict, judged }) => [
      appliance,
      zone,
      verdict,
      judged?.valuePa,
      judged?.limitPa,
      judged?.marginPa,
      judged?.nearBandPa,
      judged?.baselinePa,
    ]),
  };
}

/**
 * Where each limit comes from, and what was not judged and why.
 *
 * @param assessment - what was found
 * @returns one row a finding
 */
export function limitSourceTable(assessment: Assessment): ReportTable {
  return {
    id: 'limits',
    caption: 'Limits and their sources',
    columns: [
      { header: 'Appliance' },
      { header: 'Limits' },
      { header: 'Condition' },
      { header: 'With' },
      { header: 'Weather' },
      { header: 'Source' },
    ],
    rows: findingsByUrgency(assessment.findings).map(({ appliance, judged, reason }) =>
      judged === undefined
        ? [appliance, 'not judged', reason ?? '', '', '', '']
        : [
            appliance,
            judged.quantity,
            judged.condition,
            judged.situation.label,
            conditionWords(judged.situation, assessment),
            sourceWords(judged.source),
          ],
    ),
  };
}
