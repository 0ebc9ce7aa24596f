import type { Verdict } from '@evendraft/rules';
import { cureWords, outcomeWords } from './cure-words.js';
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
  page.heading('Cures, each solved again by itself');
  if (cures.status === 'not solved') {
    page.paragraph(fullStop(cures.why));
    return;
  }
  page.paragraph(
    'Worst value after the cure and its limit, in Pa. A cure is still to be built, assessed and tested.',
  );
  for (const { appliance, cures: own } of cures.appliances) {
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
  if (sentence === undefined) return;
  page.blank();
  page.paragraph(sentence);
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
    page.bullet(`${appliance}: ${outcomeWords(own, section)}`);
  }
  const sentence = makeUpSentence(cures, system);
  if (sentence !== undefined) page.bullet(sentence);
}
