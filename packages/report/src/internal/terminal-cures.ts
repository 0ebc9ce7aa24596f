import type { Verdict } from '@evendraft/rules';
import type { SolvedCure } from '@evendraft/remedies';
import { draftCureHeads, draftCureIntroduction, draftCureRows } from './draft-cure-words.js';
import { fullStop } from './full-stop.js';
import { makeUpSentence, sizeWords } from './size-words.js';
import type { TerminalSection } from './terminal-findings.js';

/**
 * Each cure with the numbers of the house that has it, and the make-up air that is recommended.
 *
 * @param section - page, assessment and printer
 */
export function terminalCures(section: TerminalSection): void {
  const { page, assessment, printer } = section;
  const { cures } = assessment;
  if (cures.status === 'nothing to cure') return;
  page.heading('Cures, each solved again by itself');
  if (cures.status === 'not solved') {
    page.paragraph(fullStop(cures.why));
    return;
  }
  const ofSuction = cures.appliances.filter(({ cures: own }) =>
    own.some(({ after }) => after.judged),
  );
  if (ofSuction.length > 0) {
    page.paragraph(
      'Worst suction after the cure and its limit, in Pa. A cure is still to be built, assessed and tested.',
    );
  }
  for (const { appliance, cures: own } of ofSuction) {
    page.blank();
    page.table(
      [
        { header: `For the ${appliance}`, minimum: 20 },
        { header: 'Value', align: 'right' },
        { header: 'Limit', align: 'right' },
        {
          header: 'Finding after it',
          minimum: 9,
          dress: (padded, cell) => page.dressVerdict(padded, cell as Verdict),
        },
      ],
      own.map((cure) => [
        cureWords(cure, section),
        ...(cure.after.judged === undefined
          ? ['', '']
          : [cure.after.judged.valuePa, cure.after.judged.limitPa].map(printer.signedPressure)),
        cure.after.verdict,
      ]),
    );
  }
  const sentence = makeUpSentence(cures, section.system);
  if (sentence !== undefined) {
    page.blank();
    page.paragraph(sentence);
  }
  fluesAfterCures(section);
}

function fluesAfterCures(section: TerminalSection): void {
  const { page, assessment, printer } = section;
  const { cures } = assessment;
  const flues = draftCureRows(assessment, printer);
  if (flues.length > 0) {
    page.blank();
    for (const sentence of draftCureIntroduction()) page.paragraph(sentence);
  }
  const [then, draft, start, gas, finding] = draftCureHeads;
  for (const { appliance, rows } of flues) {
    page.blank();
    page.table(
      [
        { header: `Flue of the ${appliance}`, minimum: 20 },
        { header: then, minimum: 8 },
        ...[draft, start, gas].map((header) => ({ header, align: 'right' as const })),
        {
          header: finding,
          minimum: 9,
          dress: (padded, cell) => page.dressVerdict(padded, cell as Verdict),
        },
      ],
      rows.map(({ cure, cells }) => [
        cure === undefined ? 'As it is.' : cureAgain(cure, section),
        ...cells,
      ]),
    );
  }
  if (cures.status === 'solved' && cures.fluesNotSolved !== undefined) {
    page.blank();
    page.paragraph(fullStop(cures.fluesNotSolved));
  }
}

/** A cure that was told in full above, where its suction is judged. */
function cureAgain(cure: SolvedCure, section: TerminalSection): string {
  const { makeUp, after } = cure;
  if (after.judged === undefined) return cureWords(cure, section);
  if (makeUp === undefined) return cure.cure.replace(/[,:].*$/u, '.').replace(/\.?$/u, '.');
  const [what = makeUp.remedy] = makeUp.remedy.split(' to the ');
  const size = sizeWords(makeUp.size, makeUp.dimension, section.system);
  return `Bring in air: ${what}, ${size}.`;
}

/**
 * A cure with the size of its make-up air.
 *
 * @param cure - as it was solved
 * @param section - units of the reader
 * @returns words with a full stop
 */
export function cureWords(
  { cure, makeUp }: SolvedCure,
  { system }: Pick<TerminalSection, 'system'>,
): string {
  if (makeUp === undefined) return cure;
  const nearest = makeUp.keepsLimits ? '' : ', the closest of those offered';
  const size = sizeWords(makeUp.size, makeUp.dimension, system);
  return `${cure.replace(/\.$/u, '')}, ${size}${nearest}.`;
}
