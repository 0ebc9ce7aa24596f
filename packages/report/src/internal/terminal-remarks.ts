import { assumptionGroups, type AssumptionGroup } from './assumption-groups.js';
import { countWords } from './count-words.js';
import { fullStop } from './full-stop.js';
import { proofSentences } from './proof-sentences.js';
import { rangeWarningWords } from './range-warning-words.js';
import { situationWords } from './situation-words.js';
import type { TerminalSection } from './terminal-findings.js';

/** A reader of one minute gets the assumptions that move the answer most. */
const assumptionsShown = 8;
const valuesShown = 3;
const unsolvedShown = 5;

/**
 * What a reader must know beside the numbers: what was not solved, assumed, not modelled; cautions;
 * the proof.
 *
 * @param section - page, assessment and printer
 */
export function terminalRemarks(section: TerminalSection): void {
  unsolved(section);
  bullets(section, 'Laws beyond their range', rangeWarningWords(section.assessment.worstCase));
  assumed(section);
  bullets(section, 'Not modelled', section.assessment.notModelled);
  bullets(section, 'Cautions', section.assessment.cautions);
  section.page.heading('Proof of the solve');
  section.page.paragraph(proofSentences(section.assessment.worstCase).join(' '));
}

function unsolved({ page, assessment }: TerminalSection): void {
  const all = assessment.worstCase.unsolved;
  if (all.length === 0) return;
  page.heading(`Not solved: ${countWords(all.length, 'situation')}`);
  for (const each of all.slice(0, unsolvedShown)) {
    const concerns = each.concerns.length === 0 ? '' : ` (${each.concerns.join(', ')})`;
    page.bullet(
      `${situationWords(each, assessment)}: ${each.reason}${concerns}. ${fullStop(each.hint)}`,
    );
  }
  if (all.length > unsolvedShown) {
    page.paragraph(`… and ${all.length - unsolvedShown} more, see the full report.`);
  }
}

function assumed({ page, assessment, printer }: TerminalSection): void {
  const { assumptions } = assessment;
  if (assumptions.length === 0) return;
  page.heading(
    `Assumed: ${countWords(assumptions.length, 'value')} that the house file did not give`,
  );
  page.paragraph('What moves the answer most comes first. Every source is in the full report.');
  const kinds = new Map<string, AssumptionGroup[]>();
  for (const group of assumptionGroups(assumptions, printer)) {
    const known = kinds.get(group.what);
    if (known === undefined) kinds.set(group.what, [group]);
    else known.push(group);
  }
  const shown = [...kinds].slice(0, assumptionsShown);
  for (const [what, groups] of shown) {
    const values = groups.slice(0, valuesShown).map(valueInShort);
    const left = groups.length - values.length;
    const more = left > 0 ? `; and ${countWords(left, 'further value')}` : '';
    page.bullet(`${what}: ${values.join('; ')}${more}.`);
  }
  const others = [...kinds.keys()].slice(assumptionsShown);
  if (others.length > 0) page.paragraph(`Also assumed: ${others.join(', ')}.`);
}

function valueInShort({ value, origins, status }: AssumptionGroup): string {
  const [first = 'the house', ...rest] = origins;
  const where = rest.length === 0 ? first : `${first} and ${rest.length} more`;
  return `${value} for ${where} (${status})`;
}

function bullets({ page }: TerminalSection, title: string, texts: readonly string[]): void {
  if (texts.length === 0) return;
  page.heading(title);
  for (const text of texts) page.bullet(text);
}
