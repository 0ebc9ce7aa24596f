import type { Assessment } from '../assessment.js';
import { incompleteWords } from '../internal/incomplete-words.js';
import { proofSentences } from '../internal/proof-sentences.js';
import { rangeWarningWords } from '../internal/range-warning-words.js';
import type { ReportTable } from './report-table.js';

/**
 * What the report says in sentences, as tables of one column for CSV: what was not finished, cautions, what is not
 * modelled, laws beyond their range, the proof, and what is needed to reproduce the result.
 *
 * @param assessment - what was found
 * @returns tables; some may have no rows
 */
export function sentenceTables(assessment: Assessment): readonly ReportTable[] {
  const sentences = (id: string, caption: string, texts: readonly string[]): ReportTable => ({
    id,
    caption,
    columns: [{ header: caption }],
    rows: texts.map((text) => [text]),
  });
  return [
    sentences('incomplete', 'Incomplete', incompleteWords(assessment.incomplete)),
    sentences('cautions', 'Cautions', assessment.cautions),
    sentences('not-modelled', 'Not modelled', assessment.notModelled),
    sentences('beyond-range', 'Laws beyond their range', rangeWarningWords(assessment.worstCase)),
    sentences('proof', 'Proof of the solve', proofSentences(assessment.worstCase)),
    {
      id: 'origin',
      caption: 'To reproduce this report',
      columns: [{ header: 'What' }, { header: 'Value' }],
      rows: [
        ['house', assessment.house.name],
        ['library version', assessment.libraryVersion],
        ['schema', `${assessment.schema} ${assessment.schemaVersion}`],
        ['digest of the house file', assessment.house.digest],
        ['limit set', `${assessment.limitSet.id}, edition ${assessment.limitSet.edition}`],
      ],
    },
  ];
}
