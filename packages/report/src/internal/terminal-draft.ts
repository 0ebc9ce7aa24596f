import type { Verdict } from '@evendraft/rules';
import type { ApplianceDraft } from '../draft-results.js';
import {
  calledFor,
  draftIntroduction,
  flueSentences,
  judgedCells,
  threeAnswers,
  toldFindings,
} from './draft-words.js';
import { fullStop } from './full-stop.js';
import { airCells, airHeads, airSentence, sharedAirs } from './spilled-air-words.js';
import type { TerminalSection } from './terminal-findings.js';
import type { TextColumn } from './text-table.js';

const right = { align: 'right' as const };

/**
 * Whether flues draw, spill or run backwards: three answers side by side, then each flue, then the air of rooms.
 *
 * @param section - page, assessment and printer
 */
export function terminalDraft(section: TerminalSection): void {
  const { page, assessment, system } = section;
  const { draft } = assessment;
  if (draft === undefined) return;
  page.heading('Draft, spillage and spilled gas');
  if (draft.status === 'not solved') {
    page.paragraph(fullStop(draft.why));
    return;
  }
  for (const sentence of draftIntroduction(draft)) page.paragraph(sentence);
  const verdict = verdictColumn(section);
  if (draft.appliances.length > 0) {
    page.blank();
    threeAnswersTable(section, draft.appliances);
  }
  for (const found of draft.appliances) {
    page.blank();
    page.paragraph(`${found.appliance} in ${found.zone}`);
    for (const sentence of flueSentences(found, section)) page.paragraph(sentence, 2);
    const told = toldFindings(found);
    if (told.length > 0) {
      page.table(
        [
          { header: 'Held against a limit', minimum: 16 },
          { header: 'Found', ...right },
          { header: 'Limit', ...right },
          { header: 'Finding', ...verdict },
        ],
        told.map((each) => judgedCells(each, system)),
      );
    }
    const actions = calledFor(found);
    if (actions.length > 0) page.paragraph(`What that calls for: ${actions.join(' ')}`, 2);
  }
  for (const shared of sharedAirs(draft)) {
    page.blank();
    page.paragraph(airSentence(shared, section));
    page.table(
      airHeads.map((header, index) => ({ header, ...(index === 0 ? { minimum: 6 } : right) })),
      airCells(shared.air),
    );
  }
  for (const { appliance, reason } of draft.notStudied) {
    page.bullet(`Not solved, ${appliance}: ${fullStop(reason)}`);
  }
}

/**
 * Suction limit, draft rule, and flue and house together, side by side.
 *
 * @param section - page, assessment and printer
 * @param appliances - those whose flues were solved
 */
export function threeAnswersTable(
  section: TerminalSection,
  appliances: readonly ApplianceDraft[],
): void {
  const verdict = verdictColumn(section);
  section.page.table(
    [
      { header: 'Appliance', minimum: 9 },
      { header: 'Suction limit', ...verdict },
      { header: 'Draft rule', ...verdict },
      { header: 'Flue and house together', minimum: 9 },
    ],
    appliances.map((found) => threeAnswers(found, section.assessment)),
  );
}

function verdictColumn({ page }: TerminalSection): Omit<TextColumn, 'header'> {
  return { minimum: 9, dress: (padded, cell) => page.dressVerdict(padded, cell as Verdict) };
}
