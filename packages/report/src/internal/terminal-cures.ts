import type { Verdict } from '@evendraft/rules';
import { cureAgain, cureWords, flueOutcomeWords, outcomeWords } from './cure-words.js';
import { draftCureHeads, draftCureIntroduction, draftCureRows } from './draft-cure-words.js';
import { findingsByUrgency } from './findings-by-urgency.js';
import { fullStop } from './full-stop.js';
import { makeUpSentence } from './size-words.js';
import { curesInShort, type TerminalSection } from './terminal-findings.js';

/**
 * Each cure with the numbers of the house that has it, and the make-up air that is recommended.
 *
 * @param section - page, assessment and printer
 */
export function terminalCures(section: TerminalSection): void {
  const { page, assessment, printer } = section;
  const { cures } = assessment;
  if (cures.status === 'nothing to cure') return;
  page.heading('Cures, each solved again');
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
        cureWords(cure, section.system),
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

/**
 * What the cures come to, appliance by appliance: those that keep the limit, or the one that comes closest.
 *
 * @param section - page, assessment and printer
 */
export function terminalCuresInShort(section: TerminalSection): void {
  const { page, assessment, system } = section;
  const { cures, findings } = assessment;
  if (cures.status === 'nothing to cure') return;
  if (cures.status === 'not solved') {
    for (const finding of findingsByUrgency(findings)) {
      for (const text of curesInShort(finding.cures)) page.bullet(`${finding.appliance}: ${text}`);
    }
    page.bullet(`Cures were not solved. ${fullStop(cures.why)}`);
    return;
  }
  for (const { appliance, cures: own } of cures.appliances) {
    if (own.some(({ after }) => after.judged !== undefined)) {
      page.bullet(`${appliance}: ${outcomeWords(own, section)}`);
    }
    const ofFlue = flueOutcomeWords(own, section);
    if (ofFlue !== undefined) page.bullet(`Flue of the ${appliance}: ${ofFlue}`);
  }
  if (cures.fluesNotSolved !== undefined) page.bullet(fullStop(cures.fluesNotSolved));
  const sentence = makeUpSentence(cures, system);
  if (sentence !== undefined) page.bullet(sentence);
}
