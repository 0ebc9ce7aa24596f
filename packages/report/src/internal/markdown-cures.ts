import { cureWords } from './cure-words.js';
import { draftCureHeads, draftCureIntroduction, draftCureRows } from './draft-cure-words.js';
import { fullStop } from './full-stop.js';
import type { MarkdownSection } from './markdown-findings.js';
import { makeUpSentence } from './size-words.js';

/**
 * Each cure with the numbers of the house that has it.
 *
 * @param section - page, assessment and printer
 */
export function markdownCures(section: MarkdownSection): void {
  const { page, assessment, printer, system } = section;
  const { cures } = assessment;
  if (cures.status === 'nothing to cure') return;
  page.heading(2, 'Cures, each solved again');
  if (cures.status === 'not solved') {
    page.paragraph(fullStop(cures.why));
    return;
  }
  const ofSuction = cures.appliances.filter(({ cures: own }) =>
    own.some(({ after }) => after.judged),
  );
  if (ofSuction.length > 0) {
    page.paragraph(
      'Worst suction after the cure over all states and weathers, in Pa. A cure is still to be built, assessed and tested; none is a clearance.',
    );
  }
  for (const { appliance, cures: own } of ofSuction) {
    page.heading(3, `For the ${appliance}`);
    page.table(
      [
        { header: 'Cure' },
        ...['Value', 'Limit', 'Margin'].map((header) => ({ header, align: 'right' as const })),
        { header: 'Finding after it' },
      ],
      own.map((cure) => {
        const { judged, verdict } = cure.after;
        return [
          cureWords(cure, system),
          ...(judged === undefined
            ? ['', '', '']
            : [judged.valuePa, judged.limitPa, judged.marginPa].map(printer.signedPressure)),
          verdict,
        ];
      }),
    );
  }
  const sentence = makeUpSentence(cures, system);
  if (sentence !== undefined) page.paragraph(sentence);
  const flues = draftCureRows(assessment, printer);
  if (flues.length > 0) for (const words of draftCureIntroduction()) page.paragraph(words);
  for (const { appliance, rows } of flues) {
    page.heading(3, `Flue of the ${appliance}`);
    page.table(
      [
        { header: 'Cure' },
        ...draftCureHeads.map((header, index) =>
          index > 0 && index < 4 ? { header, align: 'right' as const } : { header },
        ),
      ],
      rows.map(({ cure, cells }) => [
        cure === undefined ? 'As it is.' : cureWords(cure, system),
        ...cells,
      ]),
    );
  }
  if (cures.fluesNotSolved !== undefined) page.paragraph(fullStop(cures.fluesNotSolved));
}
