import {
  calledFor,
  draftIntroduction,
  draftSituationWords,
  flueSentences,
  judgedCells,
  threeAnswers,
  toldFindings,
} from './draft-words.js';
import { fullStop } from './full-stop.js';
import type { MarkdownSection } from './markdown-findings.js';
import { sourceWords } from './source-words.js';
import { airCells, airHeads, airSentence, sharedAirs } from './spilled-air-words.js';

const right = { align: 'right' as const };

/**
 * Whether flues draw, spill or run backwards: three answers side by side, then each flue, then the air of rooms.
 *
 * @param section - page, assessment and printer
 */
export function markdownDraft(section: MarkdownSection): void {
  const { page, assessment, system } = section;
  const { draft } = assessment;
  if (draft === undefined) return;
  page.heading(2, 'Draft, spillage and spilled gas');
  if (draft.status === 'not solved') {
    page.paragraph(fullStop(draft.why));
    return;
  }
  page.bullets(draftIntroduction(draft));
  page.table(
    ['Appliance', 'Suction limit', 'Draft rule', 'Flue and house together'].map((header) => ({
      header,
    })),
    draft.appliances.map((found) => threeAnswers(found, assessment)),
  );
  for (const found of draft.appliances) {
    page.heading(3, `${found.appliance} in ${found.zone}`);
    page.bullets(flueSentences(found, section));
    page.table(
      [
        { header: 'Held against a limit' },
        { header: 'Found', ...right },
        { header: 'Limit', ...right },
        { header: 'Finding' },
        { header: 'With' },
        { header: 'Source' },
      ],
      toldFindings(found).map((each) => [
        ...judgedCells(each, system),
        draftSituationWords(each.situation, section),
        sourceWords(each.finding.source),
      ]),
    );
    page.bullets([
      ...calledFor(found).map((action) => `What that calls for: ${action}`),
      ...new Set(found.findings.flatMap(({ finding }) => finding.notes.map(fullStop))),
    ]);
  }
  for (const shared of sharedAirs(draft)) {
    page.heading(3, `Air of the rooms: ${shared.appliances.join(', ')}`);
    page.paragraph(airSentence(shared, section));
    page.table(
      airHeads.map((header, index) => ({ header, ...(index === 0 ? {} : right) })),
      airCells(shared.air),
    );
  }
  page.bullets(
    draft.notStudied.map(
      ({ appliance, reason }) => `Not solved, ${appliance}: ${fullStop(reason)}`,
    ),
  );
}
