import { cureWords } from './cure-words.js';
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
  page.heading(2, 'Cures, each solved again by itself');
  if (cures.status === 'not solved') {
    page.paragraph(fullStop(cures.why));
    return;
  }
  page.paragraph(
    'Worst value after the cure over all states and weathers, in Pa. A cure is still to be built, assessed and tested; none is a clearance.',
  );
  for (const { appliance, cures: own } of cures.appliances) {
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
}
